#pragma once

#include <algorithm>
#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <map>
#include <mutex>
#include <system_error>
#include <thread>
#include <vector>

namespace stopwalk::files {

// Does the jobs 0 to `count` - 1 on `threads` threads, and hands their results to `take` one after another in
// that order, on the caller's thread, until it answers no. Few results wait at any time: nobody runs far
// ahead of a slow job. What either throws is thrown here, once all threads are at rest.
template <class Result>
void inOrder(std::size_t count, std::size_t threads, const std::function<Result(std::size_t)>& job,
             const std::function<bool(Result)>& take) {
  threads = std::min(std::max<std::size_t>(threads, 1), count);
  if (threads < 2) {
    for (std::size_t i = 0; i < count && take(job(i)); ++i) continue;
    return;
  }

  const std::size_t ahead = 2 * threads;
  std::mutex mutex;
  std::condition_variable changed;
  std::map<std::size_t, Result> done;  // and not yet taken
  std::size_t next = 0, taken = 0;
  bool enough = false;
  std::exception_ptr failed;

  const auto work = [&] {
    std::unique_lock lock(mutex);
    for (;;) {
      changed.wait(lock, [&] { return enough || next == count || next < taken + ahead; });
      if (enough || next == count) return;
      const std::size_t mine = next++;
      lock.unlock();
      try {
        Result result = job(mine);
        lock.lock();
        done.emplace(mine, std::move(result));
      } catch (...) {
        if (!lock.owns_lock()) lock.lock();
        failed = std::current_exception();
        enough = true;
      }
      changed.notify_all();
    }
  };
  std::vector<std::jthread> workers;
  try {
    while (workers.size() < threads) workers.emplace_back(work);
  } catch (const std::system_error&) {  // the system gives no more: those that there are do all of it
  }
  if (workers.empty()) return inOrder(count, 1, job, take);

  std::unique_lock lock(mutex);
  try {
    while (taken < count && !enough) {
      changed.wait(lock, [&] { return enough || done.contains(taken); });
      if (enough) break;
      auto ready = done.extract(taken);
      lock.unlock();
      const bool more = take(std::move(ready.mapped()));
      lock.lock();
      ++taken;
      enough = enough || !more;
      changed.notify_all();
    }
  } catch (...) {
    if (!lock.owns_lock()) lock.lock();
    failed = std::current_exception();
  }
  enough = true;
  changed.notify_all();
  lock.unlock();
  workers.clear();
  if (failed) std::rethrow_exception(failed);
}

}  // namespace stopwalk::files
