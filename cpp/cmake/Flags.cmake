# Flags every target of this project shares. Contraction is off so that a formula gives the same
# bits whether it prices (double) or explains (Traced).
if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES AND SCUPPER_IS_TOP_LEVEL)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

# Sanitizers reach every target that links the library, but not the installed package.
function(scupper_sanitize target sanitizers)
  target_compile_options(
    ${target} PUBLIC $<BUILD_INTERFACE:-fsanitize=${sanitizers}>
                     $<BUILD_INTERFACE:-fno-sanitize-recover=all>
                     $<BUILD_INTERFACE:-fno-omit-frame-pointer>)
  target_link_options(${target} PUBLIC $<BUILD_INTERFACE:-fsanitize=${sanitizers}>)
endfunction()

function(scupper_flags target)
  target_compile_features(${target} PUBLIC cxx_std_20)
  set_target_properties(${target} PROPERTIES CXX_EXTENSIONS OFF POSITION_INDEPENDENT_CODE ON)
  target_compile_options(${target} PRIVATE -ffp-contract=off)
  if(SCUPPER_DEVELOPER)
    target_compile_options(${target} PRIVATE -Wall -Wextra -Wpedantic -Wshadow -Wconversion
                                             -Wno-sign-conversion -Werror)
    if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
      # False alarms on std::string, GCC bug 105651.
      target_compile_options(${target} PRIVATE -Wno-restrict)
    endif()
  endif()
  if(SCUPPER_SANITIZE)
    scupper_sanitize(${target} ${SCUPPER_SANITIZE})
  endif()
  if(SCUPPER_FUZZ)
    scupper_sanitize(${target} address,undefined)
    target_compile_options(${target} PRIVATE -fsanitize=fuzzer-no-link)
  endif()
endfunction()
