asleft_core_test(records/bench_sheet records show)
asleft_core_test(records/bench_sheet_file records show)

# Bench sheets as PDF and as pictures to be looked at: records_sheets FOLDER
add_executable(records_sheets ${CMAKE_CURRENT_LIST_DIR}/sheets.cpp)
target_link_libraries(records_sheets PRIVATE house_flags records show)
