# What becomes of a garage file when writing fails, the power goes or the program is killed. With ASLEFT_LONG=1 in the environment these
# run for minutes instead of seconds.

function(asleft_fault_test name)
    set(target faults_${name})
    add_executable(${target} ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/${name}.cpp ${ARGN})
    set_target_properties(${target} PROPERTIES UNITY_BUILD ON)
    target_link_libraries(${target} PRIVATE house_flags store_test_support store Qt6::Core Qt6::Sql SQLite::SQLite3 GTest::gtest GTest::gtest_main)
    target_include_directories(${target} PRIVATE ${PROJECT_SOURCE_DIR}/core/store)
    add_test(NAME ${target} COMMAND ${target})
endfunction()

set(shim_sources ${CMAKE_CURRENT_LIST_DIR}/shim.cpp ${CMAKE_CURRENT_LIST_DIR}/work_load.cpp)
asleft_fault_test(failing_disk ${shim_sources})
asleft_fault_test(power_cut ${shim_sources} ${CMAKE_CURRENT_LIST_DIR}/crash.cpp)
asleft_fault_test(kill ${CMAKE_CURRENT_LIST_DIR}/work_load.cpp)
