# The garage file: what is stored is read again, and what cannot be stored is said.

find_package(SQLite3 REQUIRED)
add_library(store_test_support STATIC ${CMAKE_CURRENT_LIST_DIR}/support.cpp ${CMAKE_CURRENT_LIST_DIR}/sample.cpp
            ${CMAKE_CURRENT_LIST_DIR}/sample_joint.cpp)
target_include_directories(store_test_support PUBLIC ${CMAKE_CURRENT_LIST_DIR})
target_compile_definitions(store_test_support PRIVATE KEPT_GARAGES="${PROJECT_SOURCE_DIR}/tests/data")
target_link_libraries(store_test_support PUBLIC store Qt6::Core SQLite::SQLite3 GTest::gtest PRIVATE house_flags)

# asleft_store_test(NAME): may also look at the store's own headers.
function(asleft_store_test name)
    asleft_core_test(store/${name} store_test_support store Qt6::Core Qt6::Sql SQLite::SQLite3)
    target_include_directories(store_${name} PRIVATE ${PROJECT_SOURCE_DIR}/core/store)
endfunction()

asleft_store_test(things)
asleft_store_test(engines)
asleft_store_test(tools)
asleft_store_test(joints)
asleft_store_test(journal)
asleft_store_test(joint_acts)
asleft_store_test(opening)
asleft_store_test(upgrade)
asleft_store_test(kept_garages)
asleft_store_test(read_only)
target_sources(store_read_only PRIVATE ${CMAKE_CURRENT_LIST_DIR}/other_seat.cpp)
asleft_store_test(connection)
asleft_store_test(words)

include(${CMAKE_CURRENT_LIST_DIR}/../../faults/tests.cmake)
