#pragma once

#include <compare>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <memory>
#include <utility>
#include <vector>

namespace stopwalk::audit {

// A list whose copies share their elements, which are never changed, only replaced: what one audit leaves as
// it was costs the next report nothing, and is known at once to be the same.
template <class T>
class SharedList {
 public:
  using Entry = std::shared_ptr<const T>;

  class Iterator {
   public:
    using iterator_concept = std::random_access_iterator_tag;
    using iterator_category = std::random_access_iterator_tag;
    using value_type = T;
    using difference_type = std::ptrdiff_t;
    using pointer = const T*;
    using reference = const T&;

    Iterator() = default;
    explicit Iterator(const Entry* entry) : entry_(entry) {}
    const T& operator*() const { return **entry_; }
    const T* operator->() const { return entry_->get(); }
    const T& operator[](difference_type n) const { return *entry_[n]; }
    Iterator& operator+=(difference_type n) { return entry_ += n, *this; }
    Iterator& operator-=(difference_type n) { return entry_ -= n, *this; }
    Iterator& operator++() { return *this += 1; }
    Iterator& operator--() { return *this -= 1; }
    Iterator operator++(int) { return Iterator(entry_++); }
    Iterator operator--(int) { return Iterator(entry_--); }
    friend Iterator operator+(Iterator i, difference_type n) { return i += n; }
    friend Iterator operator+(difference_type n, Iterator i) { return i += n; }
    friend Iterator operator-(Iterator i, difference_type n) { return i -= n; }
    friend difference_type operator-(Iterator a, Iterator b) { return a.entry_ - b.entry_; }
    auto operator<=>(const Iterator&) const = default;

   private:
    const Entry* entry_ = nullptr;
  };
  using value_type = T;
  using iterator = Iterator;
  using const_iterator = Iterator;

  SharedList() = default;
  SharedList(std::initializer_list<T> all) {
    for (const T& one : all) push_back(one);
  }
  SharedList(std::vector<T> all) {  // NOLINT(google-explicit-constructor)
    for (T& one : all) push_back(std::move(one));
  }

  Iterator begin() const { return Iterator(entries_.data()); }
  Iterator end() const { return Iterator(entries_.data() + entries_.size()); }
  std::size_t size() const { return entries_.size(); }
  bool empty() const { return entries_.empty(); }
  const T& operator[](std::size_t i) const { return *entries_[i]; }
  const T& front() const { return *entries_.front(); }
  const T& back() const { return *entries_.back(); }
  const Entry& entry(std::size_t i) const { return entries_[i]; }

  void reserve(std::size_t size) { entries_.reserve(size); }
  void push_back(T one) { entries_.push_back(std::make_shared<const T>(std::move(one))); }
  void push_back(Entry entry) { entries_.push_back(std::move(entry)); }
  // Other copies keep what they have.
  void replace(std::size_t i, T by) { entries_[i] = std::make_shared<const T>(std::move(by)); }
  // The element as one that no other list has, to be changed at once.
  T& own(std::size_t i) {
    const auto own = std::make_shared<T>(*entries_[i]);
    entries_[i] = own;
    return *own;
  }
  void erase(std::size_t i) { entries_.erase(entries_.begin() + static_cast<std::ptrdiff_t>(i)); }
  void clear() { entries_.clear(); }

 private:
  std::vector<Entry> entries_;
};

}  // namespace stopwalk::audit
