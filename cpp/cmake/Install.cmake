# The installed package: library, public headers, and what find_package(scupper) reads.
include(CMakePackageConfigHelpers)
include(GNUInstallDirs)

set(package_folder "${CMAKE_INSTALL_LIBDIR}/cmake/scupper")

install(TARGETS scupper EXPORT scupper-targets COMPONENT development
        INCLUDES DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
install(DIRECTORY "${PROJECT_SOURCE_DIR}/cpp/include/" COMPONENT development
        DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}" FILES_MATCHING PATTERN "*.hpp")
install(EXPORT scupper-targets NAMESPACE scupper:: COMPONENT development
        DESTINATION "${package_folder}")

configure_package_config_file("${CMAKE_CURRENT_LIST_DIR}/scupper-config.cmake.in"
                              "${CMAKE_CURRENT_BINARY_DIR}/scupper-config.cmake"
                              INSTALL_DESTINATION "${package_folder}")
# Before 1.0 a minor release may change the interface.
write_basic_package_version_file("${CMAKE_CURRENT_BINARY_DIR}/scupper-config-version.cmake"
                                 COMPATIBILITY SameMinorVersion)
install(FILES "${CMAKE_CURRENT_BINARY_DIR}/scupper-config.cmake"
              "${CMAKE_CURRENT_BINARY_DIR}/scupper-config-version.cmake"
        COMPONENT development DESTINATION "${package_folder}")
