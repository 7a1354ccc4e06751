#include "core/files/in_order.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <new>

namespace stopwalk::files {
namespace {

// The earlier the job, the longer it takes: those behind are done before it.
std::size_t slowAtFirst(std::size_t i, std::size_t count) {
  std::this_thread::sleep_for(std::chrono::microseconds(20 * (count - i)));
  return i;
}

TEST(InOrder, ResultsAreTakenInOrderWhateverTheThreads) {
  for (const std::size_t count : {0u, 1u, 2u, 7u, 60u}) {
    for (const std::size_t threads : {0u, 1u, 2u, 3u, 16u, 100u}) {
      std::vector<std::size_t> taken;
      inOrder<std::size_t>(
          count, threads, [&](std::size_t i) { return slowAtFirst(i, count); },
          [&](std::size_t i) {
            taken.push_back(i);
            return true;
          });
      ASSERT_EQ(taken.size(), count) << threads;
      for (std::size_t i = 0; i < count; ++i) EXPECT_EQ(taken[i], i) << threads;
    }
  }
}

TEST(InOrder, FewResultsWaitBehindASlowOne) {
  constexpr std::size_t kCount = 200, kThreads = 3;
  std::atomic<std::size_t> begun = 0;
  std::size_t taken = 0, most = 0;
  inOrder<std::size_t>(
      kCount, kThreads,
      [&](std::size_t i) {
        ++begun;
        if (i == 0) std::this_thread::sleep_for(std::chrono::milliseconds(100));
        return i;
      },
      [&](std::size_t) {
        most = std::max(most, begun - taken++);
        return true;
      });
  EXPECT_EQ(taken, kCount);
  EXPECT_GT(most, 1u) << "nothing was done at the same time";
  EXPECT_LE(most, 2 * kThreads);
}

TEST(InOrder, NothingMoreIsBegunWhenEnoughWasTaken) {
  for (const std::size_t threads : {1u, 4u}) {
    std::atomic<std::size_t> begun = 0;
    std::size_t taken = 0;
    inOrder<int>(
        1000, threads,
        [&](std::size_t) {
          ++begun;
          return 0;
        },
        [&](int) { return ++taken < 5; });
    EXPECT_EQ(taken, 5u);
    EXPECT_LE(begun, 5 + 2 * threads);
  }
}

TEST(InOrder, WhatIsThrownReachesTheCaller) {
  for (const std::size_t threads : {1u, 2u, 5u}) {
    const auto job = [](std::size_t i) { return i == 7 ? throw std::bad_alloc() : i; };
    const auto take = [](std::size_t) { return true; };
    EXPECT_THROW(inOrder<std::size_t>(60, threads, job, take), std::bad_alloc) << threads;
    const auto takeNone = [](std::size_t) -> bool { throw std::bad_alloc(); };
    EXPECT_THROW(inOrder<std::size_t>(
                     60, threads, [](std::size_t i) { return i; }, takeNone),
                 std::bad_alloc)
        << threads;
  }
}

}  // namespace
}  // namespace stopwalk::files
