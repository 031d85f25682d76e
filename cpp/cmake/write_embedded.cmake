# Run by scupper_embed_text: TEXT -> HEADER and SOURCE. Every byte becomes an escape, so that no
# character of the text can end the literal.
file(READ "${TEXT}" bytes HEX)
string(LENGTH "${bytes}" digits)
math(EXPR size "${digits} / 2")
string(REPEAT "[0-9a-f]" 64 line)
string(REGEX REPLACE "(${line})" "\\1\n" bytes "${bytes}")
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" bytes "${bytes}")
string(REPLACE "\n" "\"\n    \"" bytes "${bytes}")

set(declaration "#pragma once\n#include <string_view>\n
namespace scupper::data {\nextern const std::string_view ${NAME};\n}\n")
set(definition "#include \"data/${NAME}.hpp\"\n
namespace scupper::data {
constinit const std::string_view ${NAME}{\n    \"${bytes}\",\n    ${size}};\n}\n")

get_filename_component(folder "${HEADER}" DIRECTORY)
file(MAKE_DIRECTORY "${folder}")
file(WRITE "${HEADER}" "${declaration}")
file(WRITE "${SOURCE}" "${definition}")
