#include "core/audit/shared_list.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace stopwalk::audit {
namespace {

using Words = SharedList<std::string>;

TEST(SharedListTest, CopiesShareWhatNoneOfThemReplaced) {
  Words first{"one", "two", "three"};
  Words next = first;
  next.replace(1, "TWO");
  next.own(2) += "!";
  EXPECT_TRUE(std::ranges::equal(first, std::vector<std::string>{"one", "two", "three"}));
  EXPECT_TRUE(std::ranges::equal(next, std::vector<std::string>{"one", "TWO", "three!"}));
  EXPECT_EQ(&first[0], &next[0]);
  EXPECT_NE(&first[1], &next[1]);
  EXPECT_NE(&first[2], &next[2]);
}

TEST(SharedListTest, IsARangeOfItsElements) {
  static_assert(std::ranges::random_access_range<const Words>);
  Words words(std::vector<std::string>{"b", "a", "c"});
  words.push_back("d");
  words.erase(0);
  EXPECT_EQ(words.size(), 3u);
  EXPECT_EQ(words.front() + words.back(), "ad");
  EXPECT_EQ(std::ranges::find(words, "c") - words.begin(), 1);
  words.clear();
  EXPECT_TRUE(words.empty());
  EXPECT_TRUE(words.begin() == words.end());
}

}  // namespace
}  // namespace stopwalk::audit
