#pragma once

#include <QTimer>
#include <functional>
#include <vector>

namespace stopwalk::window {

// Does one thing after another: what is small at once, and the rest in events of their own, so that together
// they do not hold the window up.
class InTurn : public QObject {
  Q_OBJECT

 public:
  explicit InTurn(QObject* parent = nullptr);

  // In the place of what is still to be done.
  void begin(std::vector<std::function<void()>> steps);
  // What is still to be done is done now.
  void finish();
  // It is not done any more.
  void leave();
  bool isDone() const { return steps_.empty(); }

 private:
  void go();
  void doNext();

  std::vector<std::function<void()>> steps_;  // the next one last
  QTimer next_;
};

}  // namespace stopwalk::window
