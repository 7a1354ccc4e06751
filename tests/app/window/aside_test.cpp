#include "app/window/aside.h"

#include <stdexcept>

#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

TEST(Aside, ThrowsHereWhatWasThrownThere) {
  Aside aside;
  EXPECT_THROW(aside([] { throw std::runtime_error("out of it"); }), std::runtime_error);
  bool done = false;
  aside([&] { done = true; });
  EXPECT_TRUE(done);
}

TEST(Aside, WhatIsThrownIsTold) {
  Aside aside;
  ToldAsker asker;
  EXPECT_FALSE(doOrTell(asker, [&] { aside([] { throw std::bad_alloc(); }); }));
  ASSERT_EQ(asker.asked, QStringList{"That could not be done"});
  EXPECT_TRUE(asker.said[0].contains("bad_alloc")) << asker.said[0].toStdString();
  EXPECT_TRUE(doOrTell(asker, [] {}));
  EXPECT_EQ(asker.asked.size(), 1);
}

}  // namespace
}  // namespace stopwalk::window
