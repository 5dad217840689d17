# Tests of the desktop: real keys and clicks on the real pages, offscreen. One executable a topic.
find_package(Qt6 6.4 REQUIRED COMPONENTS Test)

# asleft_app_test(NAME): app/<NAME>.cpp, which ends with APP_TEST(class).
function(asleft_app_test name)
    add_executable(app_${name} ${CMAKE_CURRENT_FUNCTION_LIST_DIR}/${name}.cpp)
    set_target_properties(app_${name} PROPERTIES AUTOMOC ON)
    target_include_directories(app_${name} PRIVATE ${CMAKE_CURRENT_FUNCTION_LIST_DIR})
    target_link_libraries(app_${name} PRIVATE asleft_app house_flags Qt6::Test)
    add_test(NAME app_${name} COMMAND app_${name})
    set_tests_properties(app_${name} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen;LC_ALL=C.UTF-8")
endfunction()

file(GLOB app_tests CONFIGURE_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/*_test.cpp)
foreach(file IN LISTS app_tests)
    get_filename_component(name ${file} NAME_WE)
    asleft_app_test(${name})
endforeach()
# Sets every engine of the invented garage.
target_link_libraries(app_every_engine_test PRIVATE demo_garage)
