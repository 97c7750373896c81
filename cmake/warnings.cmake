# Warnings for our own targets only; third-party headers are SYSTEM.
add_library(sparewright_warnings INTERFACE)
target_compile_options(
  sparewright_warnings
  INTERFACE -Wall
            -Wextra
            -Wpedantic
            -Wshadow
            -Wconversion
            -Wsign-conversion
            -Wnon-virtual-dtor
            -Woverloaded-virtual
            -Wold-style-cast
            -Wcast-qual
            -Wduplicated-cond
            -Wlogical-op
            -Wnull-dereference
            -Wformat=2
            # designated initializers leave out what is empty on purpose
            -Wno-missing-field-initializers
            -Werror)

# The same input gives the same bytes: no fused multiply-add that one build type has and another has not.
add_library(sparewright_flags INTERFACE)
target_compile_features(sparewright_flags INTERFACE cxx_std_20)
target_compile_options(sparewright_flags INTERFACE -ffp-contract=off)

set(SPAREWRIGHT_SANITIZE OFF CACHE BOOL "Address and undefined-behaviour sanitizers, no recovery")
if(SPAREWRIGHT_SANITIZE)
  target_compile_options(sparewright_flags INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all
                                                     -fno-omit-frame-pointer)
  target_link_options(sparewright_flags INTERFACE -fsanitize=address,undefined)
endif()
