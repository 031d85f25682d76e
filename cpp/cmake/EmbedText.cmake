# scupper_embed_text(target file name): compiles a text file into the target as
#   const std::string_view scupper::data::<name>
# A header of the target declares it. The file is named from the project's root. Call it where the
# target is made: CMake runs the generator only for targets of the same folder.
set(SCUPPER_EMBED_SCRIPT "${CMAKE_CURRENT_LIST_DIR}/write_embedded.cmake")

function(scupper_embed_text target file name)
  get_filename_component(text "${file}" ABSOLUTE BASE_DIR "${PROJECT_SOURCE_DIR}")
  set(source "${CMAKE_CURRENT_BINARY_DIR}/generated/${name}.cpp")
  add_custom_command(
    OUTPUT "${source}"
    COMMAND ${CMAKE_COMMAND} -DTEXT=${text} -DNAME=${name} -DSOURCE=${source}
            -P ${SCUPPER_EMBED_SCRIPT}
    DEPENDS "${text}" "${SCUPPER_EMBED_SCRIPT}"
    COMMENT "Embedding ${name}"
    VERBATIM)
  target_sources(${target} PRIVATE "${source}")
endfunction()
