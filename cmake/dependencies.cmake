# Other people's libraries, all from Debian 12. Each is fenced: the room that links it is named in CMakeLists.txt.
find_package(fmt REQUIRED)
find_package(pegtl QUIET)

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
