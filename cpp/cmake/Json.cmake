# nlohmann_json serves the library's sources only: it never reaches an installed header. Found as a
# CMake package (distributions), else as bare headers (the PyPI wheel `nlohmann-json`).
find_package(nlohmann_json 3.11 CONFIG QUIET)
if(TARGET nlohmann_json::nlohmann_json)
  get_target_property(SCUPPER_JSON_INCLUDE nlohmann_json::nlohmann_json
                      INTERFACE_INCLUDE_DIRECTORIES)
else()
  if(NOT EXISTS "${SCUPPER_JSON_INCLUDE}") # the build environment of an earlier pip is gone
    unset(SCUPPER_JSON_INCLUDE CACHE)
  endif()
  find_path(SCUPPER_JSON_INCLUDE nlohmann/json.hpp PATH_SUFFIXES nlohmann_json/include)
  if(NOT SCUPPER_JSON_INCLUDE)
    message(FATAL_ERROR "nlohmann_json >= 3.11 not found. Install nlohmann-json3-dev, or "
                        "`pip install nlohmann-json` and add its site-packages to "
                        "CMAKE_PREFIX_PATH.")
  endif()
endif()

function(scupper_use_json target)
  target_include_directories(${target} SYSTEM PRIVATE "${SCUPPER_JSON_INCLUDE}")
endfunction()
