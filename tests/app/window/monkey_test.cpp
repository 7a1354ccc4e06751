// Somebody who does anything at any time. Whatever comes: no crash, what is saved is read back the same, undo
// leads to the beginning and redo to the end.
#include <random>

#include "app/documents/layout_file.h"
#include "core/files/layout_writer.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using plan::Choice;

class Monkey : public AtTheWindow, public testing::WithParamInterface<unsigned> {
 protected:
  Monkey() { plan().fit(); }

  int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(chance_); }
  bool oneIn(int n) { return upTo(n - 1) == 0; }
  template <class T>
  T oneOf(std::initializer_list<T> all) {
    return *(all.begin() + upTo(static_cast<int>(all.size()) - 1));
  }
  QPoint somewhere() { return {upTo(plan().width() - 1), upTo(plan().height() - 1)}; }
  Qt::KeyboardModifiers modifiers() {
    return oneOf<Qt::KeyboardModifiers>({Qt::NoModifier, Qt::NoModifier, Qt::AltModifier, Qt::ShiftModifier});
  }

  void mouse(QEvent::Type type, QPoint at, Qt::KeyboardModifiers with) {
    const bool moves = type == QEvent::MouseMove;
    QMouseEvent event(type, QPointF(at), plan().mapToGlobal(QPointF(at)),
                      moves ? Qt::NoButton : Qt::LeftButton,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, with);
    QApplication::sendEvent(&plan(), &event);
  }
  void somethingAmid() {
    switch (upTo(7)) {
      case 0:
        return QTest::keyClick(&plan(), Qt::Key_Escape);
      case 1:
        return history().undo();
      case 2:
        return history().redo();
      case 3:
        return QTest::keyClick(&plan(), Qt::Key_Delete);
      case 4:
        return window->selection().clear();
      case 5:
        return plan().zoomBy(oneOf({0.5, 2.0, 1e-3, 1e3}));
      case 6:
        return plan().fit();
      default:
        return QTest::qWait(1);
    }
  }
  void dragAnywhere() {
    const auto with = modifiers();
    mouse(QEvent::MouseButtonPress, somewhere(), with);
    for (int i = upTo(3); i >= 0; --i) {
      mouse(QEvent::MouseMove, somewhere(), with);
      if (oneIn(6)) somethingAmid();
    }
    mouse(QEvent::MouseButtonRelease, somewhere(), with);
  }
  void chooseAnything() {
    using What = Choice::What;
    plan().choose(oneOf<Choice>({{What::Room},
                                 {What::RoomByCorners},
                                 {What::Door},
                                 {What::Fixture, "bench"},
                                 {What::Machine, "table-saw"},
                                 {What::Machine, "no-such-machine"},
                                 {What::Station, "helper"},
                                 {What::Device, "foot-bar"},
                                 {What::Device, "room-cut-off"},
                                 {What::Device, "nothing"},
                                 {What::Phone},
                                 {What::Note},
                                 {What::TapeCheck},
                                 {What::ScaleUnderlay},
                                 {What::Select}}));
  }
  void act() {
    switch (upTo(9)) {
      case 0:
      case 1:
        return chooseAnything();
      case 2:
      case 3:
      case 4:
        return dragAnywhere();
      case 5:
        QTest::mouseDClick(&plan(), Qt::LeftButton, modifiers(), somewhere());
        return;
      case 6:
        return key(oneOf({Qt::Key_Left, Qt::Key_Up, Qt::Key_R, Qt::Key_Backspace, Qt::Key_Return,
                          Qt::Key_Escape, Qt::Key_5, Qt::Key_Delete}),
                   modifiers());
      case 7:
        return key(oneOf({Qt::Key_A, Qt::Key_C, Qt::Key_V, Qt::Key_D, Qt::Key_L, Qt::Key_Z}),
                   Qt::ControlModifier);
      case 8:
        plan().setFocus();
        return;
      default:
        return somethingAmid();
    }
  }

  std::mt19937 chance_{GetParam()};
};

TEST_P(Monkey, LosesNothingAndBreaksNothing) {
  for (int i = 0; i < 250; ++i) {
    if (!QApplication::focusWidget()) plan().setFocus();
    act();
    if (layout().machines.size() > 60) history().undo();
  }
  plan().choose({});
  plan().setFocus();
  EXPECT_GT(history().count(), 5) << "it did nothing";

  asker.file = pathOf("monkey.layout.yaml");
  ASSERT_TRUE(window->files().saveAs());
  const auto saved = documents::openLayout(pathOf("monkey.layout.yaml"));
  ASSERT_TRUE(saved.read.value) << (saved.trouble ? saved.trouble->text().toStdString() : "");
  EXPECT_EQ(*saved.read.value, layout());

  while (history().canRedo()) history().redo();
  const std::string end = files::writeLayout(layout());
  while (history().canUndo()) history().undo();
  EXPECT_EQ(layout(), Document::emptyLayout());
  while (history().canRedo()) history().redo();
  EXPECT_EQ(files::writeLayout(layout()), end);
}

INSTANTIATE_TEST_SUITE_P(Seeds, Monkey, testing::Range(0u, 12u));

}  // namespace
}  // namespace stopwalk::window
