# What a person does, in a real garage file in a folder of its own.

add_library(work_test_support STATIC ${CMAKE_CURRENT_LIST_DIR}/support.cpp)
target_include_directories(work_test_support PUBLIC ${CMAKE_CURRENT_LIST_DIR})
target_link_libraries(work_test_support PUBLIC demo_garage work GTest::gtest PRIVATE house_flags)

asleft_core_test(work/vehicles work_test_support)
asleft_core_test(work/specs work_test_support)
asleft_core_test(work/jobs work_test_support)
asleft_core_test(work/readings work_test_support)
asleft_core_test(work/crank work_test_support)
asleft_core_test(work/undo work_test_support)
asleft_core_test(work/seats work_test_support)
asleft_core_test(work/failed_commit work_test_support)
asleft_core_test(work/demo_garage work_test_support)
