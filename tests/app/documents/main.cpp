#include <gtest/gtest.h>

#include <QCoreApplication>

// Timers and watchers need an application.
int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  const QCoreApplication application(argc, argv);
  return RUN_ALL_TESTS();
}
