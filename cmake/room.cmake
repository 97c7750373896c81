# The house: every room is one folder, one namespace and one target, and names the rooms it may use.
#
#   sparewright_room(core/ledger USES core/formula THIRD_PARTY Some::target)
#
# USES         rooms this one may include. Inside core/ what those may use comes with them.
# THIRD_PARTY  targets of other people's libraries; linked PRIVATE, so they stop at this room's .cpp files.
# THIRD_PARTY_IN_HEADERS  the few that our own headers show (fmt, expected).
# PROGRAM      the room is a program of that name, not a library.
# HIDES        the room's users see this room only, not what it uses (app towards cli, server, store).
# SHOWS        of a room that hides: the headers its users include. The others are its own, and need what it hides.
#
# Each room gets an include directory of its own holding one link to its folder, so an include of a room that is
# not in USES does not compile. The graph is also written to rooms.json for tools/check_rooms.py, which compares
# the includes with it (a precompiled header could hide a wrong one).

set_property(GLOBAL PROPERTY SPAREWRIGHT_ROOMS "")

function(sparewright_target_name room out)
  string(REGEX REPLACE "^core/" "" name ${room})
  string(REPLACE "/" "_" name ${name})
  set(${out} sparewright_${name} PARENT_SCOPE)
endfunction()

function(sparewright_room room)
  cmake_parse_arguments(ARG "HIDES" "PROGRAM" "USES;SHOWS;THIRD_PARTY;THIRD_PARTY_IN_HEADERS" ${ARGN})
  sparewright_target_name(${room} target)
  set(source_dir ${PROJECT_SOURCE_DIR}/${room})
  set(include_dir ${PROJECT_BINARY_DIR}/rooms/${target})
  get_filename_component(parent ${room} DIRECTORY)
  file(MAKE_DIRECTORY ${include_dir}/${parent})
  file(CREATE_LINK ${source_dir} ${include_dir}/${room} SYMBOLIC)

  file(GLOB sources CONFIGURE_DEPENDS ${source_dir}/*.cpp)
  file(GLOB headers CONFIGURE_DEPENDS RELATIVE ${source_dir} ${source_dir}/*.hpp)
  if(ARG_SHOWS)
    set(headers ${ARG_SHOWS})
  endif()
  list(TRANSFORM headers PREPEND ${include_dir}/${room}/)

  if(ARG_PROGRAM)
    add_executable(${target} ${sources})
    set_target_properties(${target} PROPERTIES OUTPUT_NAME ${ARG_PROGRAM}
                                               RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/bin)
  elseif(sources)
    add_library(${target} STATIC ${sources})
  endif()
  if(sources)
    set(scope PUBLIC)
    set(hidden PRIVATE)
    target_link_libraries(${target} PRIVATE sparewright_warnings)
    target_precompile_headers(${target} REUSE_FROM sparewright_pch)
    target_link_libraries(${target} PRIVATE sparewright_pch_flags)
    sparewright_batches(${target} ${sources})
  else()
    add_library(${target} INTERFACE)
    set(scope INTERFACE)
    set(hidden INTERFACE)
  endif()
  target_link_libraries(${target} ${scope} sparewright_flags)
  target_sources(${target} ${scope} FILE_SET HEADERS BASE_DIRS ${include_dir} FILES ${headers})
  target_include_directories(${target} ${scope} ${include_dir})

  foreach(used IN LISTS ARG_USES)
    sparewright_target_name(${used} used_target)
    if(NOT TARGET ${used_target})
      message(FATAL_ERROR "${room} may use ${used}, which is not declared before it: the arrows go one way")
    endif()
    if(ARG_HIDES)
      target_link_libraries(${target} ${hidden} ${used_target})
    else()
      target_link_libraries(${target} ${scope} ${used_target})
    endif()
  endforeach()
  target_link_libraries(${target} ${hidden} ${ARG_THIRD_PARTY})
  target_link_libraries(${target} ${scope} ${ARG_THIRD_PARTY_IN_HEADERS})

  list(JOIN ARG_USES "\", \"" uses)
  if(uses)
    set(uses "\"${uses}\"")
  endif()
  string(TOLOWER "${ARG_HIDES}" hides)
  if(NOT hides)
    set(hides false)
  endif()
  set_property(GLOBAL APPEND PROPERTY SPAREWRIGHT_ROOMS
                                      "{\"room\": \"${room}\", \"uses\": [${uses}], \"hides\": ${hides}}")
endfunction()

# What every test program is built with. It is built oftener than it is run, so its own code stays at -O0 (the room keeps
# its -O1), and three of the undefined-behaviour checks stay with the room: they make a quarter of what a test costs to compile,
# and a null or a stray pointer that is read stops the address sanitizer too.
function(sparewright_test_program program)
  target_link_libraries(${program} PRIVATE sparewright_flags fmt::fmt sparewright_warnings sparewright_test_support)
  target_compile_definitions(${program} PRIVATE SPAREWRIGHT_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_precompile_headers(${program} REUSE_FROM sparewright_test_pch)
  get_target_property(sources ${program} SOURCES)
  sparewright_batches(${program} ${sources})
endfunction()

set(sparewright_test_environment
    "LSAN_OPTIONS=suppressions=${PROJECT_SOURCE_DIR}/tests/leaks.supp:print_suppressions=0")

# One test program a room, from tests/{unit,property,outside,golden,fuzz}/<room>/*.cpp. It links that room only.
function(sparewright_room_tests room)
  cmake_parse_arguments(ARG "" "" "THIRD_PARTY" ${ARGN})
  sparewright_target_name(${room} target)
  set(sources "")
  foreach(kind unit property outside golden fuzz)
    file(GLOB found CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/tests/${kind}/${room}/*.cpp)
    list(APPEND sources ${found})
  endforeach()
  if(NOT sources)
    message(FATAL_ERROR "no tests for ${room}")
  endif()
  set(program ${target}_tests)
  add_executable(${program} ${sources})
  target_link_libraries(${program} PRIVATE ${target} ${ARG_THIRD_PARTY})
  sparewright_test_program(${program})
  add_test(NAME ${room}
           COMMAND ${program} --gtest_brief=1
                   --gtest_output=json:${PROJECT_BINARY_DIR}/results/${target}.json
           WORKING_DIRECTORY ${PROJECT_SOURCE_DIR})
  set_tests_properties(${room} PROPERTIES ENVIRONMENT "${sparewright_test_environment}")
endfunction()

# The tests of a program: they run it as a user does. Sources as for a room's tests.
function(sparewright_program_tests room)
  sparewright_target_name(${room} target)
  file(GLOB sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/tests/*/${room}/*.cpp)
  set(program ${target}_tests)
  add_executable(${program} ${sources})
  target_link_libraries(${program} PRIVATE nlohmann_json::nlohmann_json)
  target_compile_definitions(${program} PRIVATE SPAREWRIGHT_PROGRAM="$<TARGET_FILE:${target}>")
  sparewright_test_program(${program})
  add_dependencies(${program} ${target})
  add_test(NAME ${room}
           COMMAND ${program} --gtest_brief=1
                   --gtest_output=json:${PROJECT_BINARY_DIR}/results/${target}.json
           WORKING_DIRECTORY ${PROJECT_SOURCE_DIR})
  set_tests_properties(${room} PROPERTIES ENVIRONMENT "${sparewright_test_environment}")
endfunction()

function(sparewright_write_rooms)
  get_property(rooms GLOBAL PROPERTY SPAREWRIGHT_ROOMS)
  list(JOIN rooms ",\n  " body)
  file(WRITE ${PROJECT_BINARY_DIR}/rooms.json "[\n  ${body}\n]\n")
endfunction()
