asleft_core_tests(records LIBRARIES draw WITHOUT sheets.cpp)

# Bench sheets as PDF and as pictures to be looked at: records_sheets FOLDER. Built when it is asked for.
add_executable(records_sheets EXCLUDE_FROM_ALL ${CMAKE_CURRENT_LIST_DIR}/sheets.cpp)
target_include_directories(records_sheets PRIVATE ${PROJECT_SOURCE_DIR}/tests/support)
target_link_libraries(records_sheets PRIVATE house_flags records draw)
