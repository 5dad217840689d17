# Tests of the desktop: real keys and clicks on the real pages, offscreen. One executable; each class is a test of its own, run in a process of
# its own: app_tests FILE runs the class that APP_TEST names in FILE.cpp.
find_package(Qt6 6.4 REQUIRED COMPONENTS Test)

file(GLOB app_tests CONFIGURE_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/*_test.cpp)
add_executable(app_tests ${CMAKE_CURRENT_LIST_DIR}/main.cpp ${app_tests})
# Each file has a namespace of its own, so that several are compiled together.
set_target_properties(app_tests PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 6)
asleft_moc(app_tests)
target_include_directories(app_tests PRIVATE ${CMAKE_CURRENT_LIST_DIR} ${CMAKE_CURRENT_LIST_DIR}/../support)
target_link_libraries(app_tests PRIVATE app_pictures demo_garage house_flags Qt6::Sql Qt6::Test)
target_precompile_headers(app_tests PRIVATE ${CMAKE_CURRENT_LIST_DIR}/bench_driver.h)
foreach(file IN LISTS app_tests)
    get_filename_component(name ${file} NAME_WE)
    add_test(NAME app_${name} COMMAND app_tests ${name})
    set_tests_properties(app_${name} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen;LC_ALL=C.UTF-8")
endforeach()
