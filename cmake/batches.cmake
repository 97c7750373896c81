# Sources compiled several at a time, for the configurations that are built whole: headers are read and templates made once
# a batch. tools/batches.py sorts them so that no two files of a batch can tell that they are together. It does so when
# CMake configures; after an edit that makes one file's private name known to another of its batch, configure again.
# What a file should include and does not can hide behind the file before it: the preset dev compiles each alone.
set(SPAREWRIGHT_BATCH_SIZE 1 CACHE STRING "How many sources are compiled as one, at most")

function(sparewright_batches target)
  if(SPAREWRIGHT_BATCH_SIZE LESS 2)
    return()
  endif()
  execute_process(
    COMMAND ${SPAREWRIGHT_PYTHON} ${PROJECT_SOURCE_DIR}/tools/batches.py ${SPAREWRIGHT_BATCH_SIZE} ${ARGN}
    OUTPUT_VARIABLE printed
    OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
  string(REPLACE ";" "\\;" batches "${printed}")
  string(REPLACE "\n" ";" batches "${batches}")
  foreach(batch IN LISTS batches)
    list(LENGTH batch count)
    if(count GREATER 1)
      list(GET batch 0 first)
      get_filename_component(name ${first} NAME_WE)
      # A test of each kind may have the same name.
      if(first MATCHES "/tests/(property|outside|golden|fuzz)/")
        string(APPEND name "_${CMAKE_MATCH_1}")
      endif()
      set_source_files_properties(${batch} PROPERTIES UNITY_GROUP ${name})
    endif()
  endforeach()
  # In a batch a source stands where a header does, and this warning is for headers; single files keep it.
  target_compile_options(${target} PRIVATE -Wno-subobject-linkage)
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
endfunction()
