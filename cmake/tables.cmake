# Tables compiled in: tools/handbook_tables.py turns <room>/data/*.csv into rows that one .cpp a subject includes as
# "generated/<room>/<table>.inc". No table is read at run time. A row that cannot be placed fails the build.
find_program(SPAREWRIGHT_PYTHON python3 HINTS /usr/bin REQUIRED)

function(sparewright_tables room)
  sparewright_target_name(${room} target)
  set(data_dir ${PROJECT_SOURCE_DIR}/${room}/data)
  set(generated_dir ${PROJECT_BINARY_DIR}/tables/${target})
  set(script ${PROJECT_SOURCE_DIR}/tools/handbook_tables.py)
  file(GLOB tables CONFIGURE_DEPENDS ${data_dir}/*.csv)
  set(outputs "")
  foreach(table IN LISTS tables)
    get_filename_component(name ${table} NAME_WE)
    if(NOT name STREQUAL "sources")
      list(APPEND outputs ${generated_dir}/generated/${room}/${name}.inc)
    endif()
  endforeach()
  add_custom_command(
    OUTPUT ${outputs}
    COMMAND ${SPAREWRIGHT_PYTHON} ${script} ${data_dir} ${generated_dir}/generated/${room}
    DEPENDS ${script} ${tables}
    COMMENT "Tables of ${room}"
    VERBATIM)
  add_custom_target(${target}_tables DEPENDS ${outputs})
  add_dependencies(${target} ${target}_tables)
  target_include_directories(${target} PRIVATE ${generated_dir})
endfunction()
