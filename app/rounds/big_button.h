#pragma once

#include <QAbstractButton>
#include <optional>

namespace stopwalk::rounds {

// No target for a finger is lower.
inline constexpr int kTouch_px = 44;

// A tick box, or one of several choices, to be met by a finger in a glove: its sign, its words on as many
// lines as they need, and the key that does the same.
class BigButton : public QAbstractButton {
  Q_OBJECT

 public:
  enum class Sign { Box, Circle };
  // `may_be_no`: pressed once yes, twice no, three times nothing is said.
  BigButton(Sign sign, const QString& text, const QString& key, bool may_be_no, QWidget* parent);

  std::optional<bool> answer() const { return answer_; }
  void setAnswer(std::optional<bool> answer);
  // Of the choice: what its frame is drawn in when it is chosen.
  void setInk(const QColor& ink) { ink_ = ink; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return {kTouch_px, kTouch_px}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 signals:
  void answered();  // by a person

 protected:
  void nextCheckState() override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  QRect textRect(const QRect& inside) const;
  QString shownText() const;
  void paintSign(QPainter& painter, const QRectF& square, const QColor& ink) const;
  void tellAnswer();

  Sign sign_;
  QString key_;
  bool may_be_no_;
  std::optional<bool> answer_;
  QColor ink_;
};

}  // namespace stopwalk::rounds
