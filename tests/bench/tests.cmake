# How fast, as ratios in one run: `cmake --build --preset bench` and `build/bench/tests/asleft_bench`, or scripts/bench. With --short each
# is only run once, so that it is known to work; nothing here ever fails for being slow.

add_executable(bench_bare_window ${CMAKE_CURRENT_LIST_DIR}/bare_window.cpp)
target_link_libraries(bench_bare_window PRIVATE house_flags Qt6::Widgets)

add_executable(bench_garage_window ${CMAKE_CURRENT_LIST_DIR}/garage_window.cpp)
target_link_libraries(bench_garage_window PRIVATE house_flags app_window)

add_executable(bench_joint_window ${CMAKE_CURRENT_LIST_DIR}/joint_window.cpp ${CMAKE_CURRENT_LIST_DIR}/bench_timing.cpp)
target_link_libraries(bench_joint_window PRIVATE house_flags app_window)

file(GLOB bench_sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/bench_*.cpp)
add_executable(asleft_bench ${bench_sources})
set_target_properties(asleft_bench PROPERTIES UNITY_BUILD ON)
target_link_libraries(asleft_bench PRIVATE house_flags demo_garage work store Qt6::Core SQLite::SQLite3)
target_compile_definitions(asleft_bench PRIVATE BARE_WINDOW="$<TARGET_FILE:bench_bare_window>" GARAGE_WINDOW="$<TARGET_FILE:bench_garage_window>"
                                                JOINT_WINDOW="$<TARGET_FILE:bench_joint_window>")
add_dependencies(asleft_bench bench_bare_window bench_garage_window bench_joint_window)

add_test(NAME bench_short COMMAND asleft_bench --short)
set_tests_properties(bench_short PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen;LC_ALL=C.UTF-8")
