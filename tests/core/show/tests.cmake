asleft_core_test(show/colours show)
target_sources(show_colours PRIVATE ${CMAKE_CURRENT_LIST_DIR}/colour_maths.cpp)
asleft_core_test(show/shapes show)
asleft_core_test(show/heads show)
asleft_core_test(show/trains show)
asleft_core_test(show/drawings show)
asleft_core_test(show/words show)
asleft_core_test(show/measuring show)
asleft_core_test(show/positions show)
asleft_core_test(show/setting show)

# Every shape, head, engine and scale as pictures to be looked at: show_sheets FOLDER
add_executable(show_sheets ${CMAKE_CURRENT_LIST_DIR}/sheets.cpp)
target_link_libraries(show_sheets PRIVATE house_flags show)
