# The garage file: what is stored is read again, and what cannot be stored is said. May also look at the store's own headers.

find_package(SQLite3 REQUIRED)
set(support support.cpp sample.cpp sample_joint.cpp)
list(TRANSFORM support PREPEND ${CMAKE_CURRENT_LIST_DIR}/ OUTPUT_VARIABLE support_files)
add_library(store_test_support STATIC ${support_files})
set_target_properties(store_test_support PROPERTIES UNITY_BUILD ON)
target_include_directories(store_test_support PUBLIC ${CMAKE_CURRENT_LIST_DIR} ${PROJECT_SOURCE_DIR}/tests/support)
target_compile_definitions(store_test_support PRIVATE KEPT_GARAGES="${PROJECT_SOURCE_DIR}/tests/data")
target_link_libraries(store_test_support PUBLIC store Qt6::Core SQLite::SQLite3 GTest::gtest PRIVATE house_flags)

asleft_core_tests(store LIBRARIES store_test_support Qt6::Core Qt6::Sql SQLite::SQLite3 WITHOUT ${support})
target_include_directories(store_tests PRIVATE ${PROJECT_SOURCE_DIR}/core/store)

include(${CMAKE_CURRENT_LIST_DIR}/../../faults/tests.cmake)
