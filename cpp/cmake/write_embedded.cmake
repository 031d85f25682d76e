# Run by scupper_embed_text: TEXT -> SOURCE. Every byte becomes an escape, so that no
# character of the text can end the literal.
file(READ "${TEXT}" bytes HEX)
string(LENGTH "${bytes}" digits)
math(EXPR size "${digits} / 2")
string(REPEAT "[0-9a-f]" 64 line)
string(REGEX REPLACE "(${line})" "\\1\n" bytes "${bytes}")
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" bytes "${bytes}")
string(REPLACE "\n" "\"\n    \"" bytes "${bytes}")

set(definition "#include <string_view>\n
namespace scupper::data {
extern const std::string_view ${NAME};
constinit const std::string_view ${NAME}{\n    \"${bytes}\",\n    ${size}};\n}\n")

get_filename_component(folder "${SOURCE}" DIRECTORY)
file(MAKE_DIRECTORY "${folder}")
file(WRITE "${SOURCE}" "${definition}")
