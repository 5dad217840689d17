asleft_core_tests(draw WITHOUT sheets.cpp joint_sheets.cpp)
target_include_directories(draw_tests PRIVATE ${PROJECT_SOURCE_DIR}/core/draw)

# Every shape, joint, head, engine and scale as pictures to be looked at: draw_sheets FOLDER. Built when it is asked for.
add_executable(draw_sheets EXCLUDE_FROM_ALL ${CMAKE_CURRENT_LIST_DIR}/sheets.cpp ${CMAKE_CURRENT_LIST_DIR}/joint_sheets.cpp)
set_target_properties(draw_sheets PROPERTIES UNITY_BUILD ON)
target_include_directories(draw_sheets PRIVATE ${PROJECT_SOURCE_DIR}/tests/support)
target_link_libraries(draw_sheets PRIVATE house_flags draw)
