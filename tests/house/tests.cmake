# The rules of the house, as tests. All carry the label "house" and none of them builds anything.

find_program(BASH bash REQUIRED)
set(house ${CMAKE_CURRENT_LIST_DIR})

function(asleft_house_test name)
    add_test(NAME house_${name} COMMAND ${ARGN})
    set_tests_properties(house_${name} PROPERTIES LABELS house SKIP_RETURN_CODE 77)
endfunction()

asleft_house_test(rules ${BASH} ${house}/rules.sh ${PROJECT_SOURCE_DIR})
asleft_house_test(rules_can_fail ${BASH} ${house}/rules_can_fail.sh)
asleft_house_test(scripts_parse ${BASH} ${house}/scripts_parse.sh ${PROJECT_SOURCE_DIR})
asleft_house_test(format ${BASH} ${PROJECT_SOURCE_DIR}/scripts/format --check)

# Arrows between rooms. asleft_arrows(TARGET MAY rooms MUST_NOT rooms): a file that sees exactly what TARGET's own sources see finds
# the first header of the rooms of MAY, and none of a room it must not. The same headers are the controls of each other: what
# one room must not reach, another one shows to be there and to compile. The compiler only looks; no build tree is touched.
function(asleft_arrows target)
    cmake_parse_arguments(ARROWS "" "" "MAY;MUST_NOT" ${ARGN})
    if(NOT TARGET ${target})
        return()
    endif()
    set(flags ${CMAKE_CURRENT_BINARY_DIR}/arrows_${target}.rsp)
    set(seen "$<TARGET_PROPERTY:${target},INCLUDE_DIRECTORIES>")
    file(GENERATE OUTPUT ${flags} CONTENT "-std=c++20 -fPIC\n$<$<BOOL:${seen}>:-I\"$<JOIN:${seen},\"\n-I\">\"\n>" TARGET ${target})
    foreach(rule MAY MUST_NOT)
        set(headers)
        foreach(room IN LISTS ARROWS_${rule})
            file(GLOB found CONFIGURE_DEPENDS RELATIVE ${PROJECT_SOURCE_DIR}/core/${room}/include
                ${PROJECT_SOURCE_DIR}/core/${room}/include/${room}/*.h)
            if(found)
                list(GET found 0 first)
                list(APPEND headers ${first})
            endif()
        endforeach()
        if(headers)
            string(TOLOWER ${rule} name)
            string(REPLACE "_" "-" word ${name})
            asleft_house_test(arrows_${target}_${name} ${BASH} ${house}/arrows.sh ${CMAKE_CXX_COMPILER} ${flags} ${word} ${headers})
        endif()
    endforeach()
endfunction()

asleft_arrows(base MAY base MUST_NOT measure engine shop store work show records)
asleft_arrows(measure MAY measure MUST_NOT engine shop store work show records)
asleft_arrows(engine MAY engine MUST_NOT shop store work show records)
asleft_arrows(shop MAY shop MUST_NOT store work show records)
asleft_arrows(store MAY store MUST_NOT work show records)
asleft_arrows(work MAY work store MUST_NOT show records)
asleft_arrows(show MAY show MUST_NOT store work records)
asleft_arrows(records MAY records show MUST_NOT store work)
asleft_arrows(asleft_app MAY work show records MUST_NOT store)
asleft_arrows(asleft-demo MAY work MUST_NOT store)
