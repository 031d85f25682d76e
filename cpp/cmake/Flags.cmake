# Flags every target of this project shares. Contraction is off so that a formula gives the same
# bits whether it prices (double) or explains (Traced).
if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES AND PROJECT_IS_TOP_LEVEL)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

function(scupper_flags target)
  target_compile_features(${target} PUBLIC cxx_std_20)
  set_target_properties(${target} PROPERTIES CXX_EXTENSIONS OFF POSITION_INDEPENDENT_CODE ON)
  target_compile_options(${target} PRIVATE -ffp-contract=off)
  if(SCUPPER_DEVELOPER)
    target_compile_options(${target} PRIVATE -Wall -Wextra -Wpedantic -Wshadow -Wconversion
                                             -Wno-sign-conversion -Werror)
  endif()
  if(SCUPPER_SANITIZE)
    target_compile_options(${target} PUBLIC -fsanitize=${SCUPPER_SANITIZE}
                                            -fno-sanitize-recover=all -fno-omit-frame-pointer)
    target_link_options(${target} PUBLIC -fsanitize=${SCUPPER_SANITIZE})
  endif()
endfunction()
