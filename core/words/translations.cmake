# The translations, compiled into the program. scripts/translations brings the sources of them up to date.
find_program(LRELEASE NAMES lrelease lrelease6 lrelease-qt6 HINTS /usr/lib/qt6/bin REQUIRED)
set(translation ${CMAKE_CURRENT_BINARY_DIR}/asleft_en.qm)
add_custom_command(OUTPUT ${translation}
    COMMAND ${LRELEASE} -silent ${PROJECT_SOURCE_DIR}/resources/translations/asleft_en.ts -qm ${translation}
    DEPENDS ${PROJECT_SOURCE_DIR}/resources/translations/asleft_en.ts
    VERBATIM)
qt_add_resources(words translations PREFIX /translations BASE ${CMAKE_CURRENT_BINARY_DIR} FILES ${translation})
