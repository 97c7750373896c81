# Other people's libraries, all from Debian 12. Each is fenced: the room that links it is named in CMakeLists.txt.
find_package(fmt REQUIRED)
find_package(pegtl QUIET)
find_package(Eigen3 3.4 REQUIRED NO_MODULE)
find_package(nlohmann_json REQUIRED)
find_package(PkgConfig REQUIRED)
find_package(CLI11 REQUIRED)
pkg_check_modules(pangocairo REQUIRED IMPORTED_TARGET pangocairo)
# Its -pthread would define _REENTRANT, and the shared precompiled header was made without.
set_property(TARGET PkgConfig::pangocairo PROPERTY INTERFACE_COMPILE_OPTIONS "")
pkg_check_modules(tomlplusplus REQUIRED IMPORTED_TARGET tomlplusplus)  # the shared library: TOML_HEADER_ONLY=0

# The toolkits of Open CASCADE that the solid room calls: primitives, booleans, triangles, measurements, plain STEP. Nothing that
# draws. Found one by one: its own package file wants every module there is, X11 and GL among them.
find_path(OCCT_INCLUDE_DIR Standard_Version.hxx PATH_SUFFIXES opencascade REQUIRED)
add_library(sparewright_occt INTERFACE)
target_include_directories(sparewright_occt SYSTEM INTERFACE ${OCCT_INCLUDE_DIR})
foreach(toolkit TKSTEP TKSTEPBase TKXSBase TKMesh TKBO TKPrim TKTopAlgo TKBRep TKGeomBase TKG3d TKG2d TKMath TKernel)
  find_library(OCCT_${toolkit} ${toolkit} REQUIRED)
  target_link_libraries(sparewright_occt INTERFACE ${OCCT_${toolkit}})
endforeach()

# Hidden lines by the kernel: for tests and benchmarks that judge by them. No room links it.
find_library(OCCT_TKHLR TKHLR REQUIRED)
add_library(sparewright_occt_hidden_lines INTERFACE)
target_link_libraries(sparewright_occt_hidden_lines INTERFACE ${OCCT_TKHLR} sparewright_occt)

# Header-only PEGTL; SYSTEM so its headers do not meet our warnings.
add_library(sparewright_pegtl INTERFACE)
target_include_directories(sparewright_pegtl SYSTEM INTERFACE /usr/include)

# One precompiled header, std and fmt, shared by every room.
add_library(sparewright_pch_flags INTERFACE)
target_link_libraries(sparewright_pch_flags INTERFACE sparewright_flags fmt::fmt)
file(WRITE ${PROJECT_BINARY_DIR}/pch.cpp "// the precompiled header's translation unit\n")
add_library(sparewright_pch STATIC ${PROJECT_BINARY_DIR}/pch.cpp)
target_link_libraries(sparewright_pch PRIVATE sparewright_pch_flags sparewright_warnings)
target_precompile_headers(
  sparewright_pch
  PRIVATE
  <algorithm>
  <array>
  <cmath>
  <functional>
  <map>
  <memory>
  <optional>
  <span>
  <string>
  <string_view>
  <utility>
  <variant>
  <vector>
  <fmt/format.h>)
