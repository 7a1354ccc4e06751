#include "app/rounds/big_button.h"

#include <QPainter>
#include <algorithm>

namespace stopwalk::rounds {
namespace {

constexpr int kSign_px = 20, kGap_px = 8, kKey_px = 18, kRound_px = 4;

QColor between(const QColor& a, const QColor& b, double part) {
  const auto mixed = [&](int from, int to) { return static_cast<int>(from + part * (to - from)); };
  return {mixed(a.red(), b.red()), mixed(a.green(), b.green()), mixed(a.blue(), b.blue())};
}

}  // namespace

BigButton::BigButton(Sign sign, const QString& text, const QString& key, bool may_be_no, QWidget* parent)
    : QAbstractButton(parent), sign_(sign), key_(key), may_be_no_(may_be_no) {
  setText(text);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  if (!key.isEmpty()) setToolTip(tr("Key: %1").arg(key));
  tellAnswer();
}

void BigButton::setAnswer(std::optional<bool> answer) {
  answer_ = answer;
  setChecked(answer == true);
  tellAnswer();
  update();
}

void BigButton::nextCheckState() {
  if (!answer_)
    setAnswer(true);
  else if (*answer_ && may_be_no_)
    setAnswer(false);
  else if (sign_ == Sign::Box)
    setAnswer(std::nullopt);
  emit answered();
}

QString BigButton::shownText() const {
  return answer_ == false ? tr("No: %1").arg(text()) : text();
}

// A reader of the screen hears what a box says, the key, and what else it may say.
void BigButton::tellAnswer() {
  setAccessibleName(shownText());
  setAccessibleDescription(key_.isEmpty() ? QString()
                           : may_be_no_   ? tr("Key %1: once yes, twice no, three times not tried").arg(key_)
                                          : tr("Key %1").arg(key_));
}

QRect BigButton::textRect(const QRect& inside) const {
  return inside.adjusted(kSign_px + 2 * kGap_px, kGap_px / 2,
                         -(key_.isEmpty() ? kGap_px : kKey_px + 2 * kGap_px), -kGap_px / 2);
}

int BigButton::heightForWidth(int width) const {
  const QRect room = textRect({0, 0, width, 1000});
  const QString longest = may_be_no_ ? tr("No: %1").arg(text()) : text();
  QFont bold = font();  // once it is answered
  bold.setBold(true);
  return std::max(kTouch_px,
                  QFontMetrics(bold).boundingRect(room, Qt::TextWordWrap, longest).height() + kGap_px);
}

QSize BigButton::sizeHint() const {
  constexpr int kUsual_px = 200;
  return {kUsual_px, heightForWidth(kUsual_px)};
}

void BigButton::paintSign(QPainter& painter, const QRectF& square, const QColor& ink) const {
  painter.setPen(QPen(ink, 2));
  painter.setBrush(palette().base());
  if (sign_ == Sign::Box)
    painter.drawRoundedRect(square, 2, 2);
  else
    painter.drawEllipse(square);
  if (!answer_) return;
  painter.setPen(QPen(ink, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  const auto at = [&](double x, double y) {
    return QPointF(square.left() + x * square.width(), square.top() + y * square.height());
  };
  if (!*answer_) {
    painter.drawLine(at(0.25, 0.25), at(0.75, 0.75));
    painter.drawLine(at(0.75, 0.25), at(0.25, 0.75));
  } else if (sign_ == Sign::Box) {
    painter.drawPolyline(QPolygonF{at(0.2, 0.5), at(0.42, 0.75), at(0.8, 0.25)});
  } else {
    painter.setBrush(ink);
    painter.drawEllipse(square.adjusted(6, 6, -6, -6));
  }
}

void BigButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPalette& colours = palette();
  const QColor text = colours.color(QPalette::ButtonText), ground = colours.color(QPalette::Button);
  const bool said = answer_.has_value();
  const QColor ink = said && ink_.isValid() ? ink_ : text;
  const QColor quiet = between(ground, text, 0.45);
  const QRect inside = rect().adjusted(1, 1, -1, -1);
  painter.setPen(hasFocus() ? QPen(colours.color(QPalette::Highlight), 3)
                            : QPen(said ? ink : quiet, said ? 2 : 1));
  painter.setBrush(isDown() || underMouse() ? between(ground, text, 0.08)
                   : said                   ? colours.color(QPalette::Base)
                                            : ground);
  painter.drawRoundedRect(QRectF(inside).adjusted(0.5, 0.5, -0.5, -0.5), kRound_px, kRound_px);
  const QRectF square(kGap_px, (height() - kSign_px) / 2.0, kSign_px, kSign_px);
  paintSign(painter, square, isEnabled() ? ink : quiet);
  QFont letters = font();
  letters.setBold(said);
  painter.setFont(letters);
  painter.setPen(isEnabled() ? text : quiet);
  painter.drawText(textRect(rect()), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, shownText());
  if (key_.isEmpty()) return;
  const QRectF key(width() - kKey_px - kGap_px, (height() - kKey_px) / 2.0, kKey_px, kKey_px);
  painter.setFont(font());
  painter.setPen(QPen(quiet, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(key, 3, 3);
  painter.setPen(between(ground, text, 0.8));
  painter.drawText(key, Qt::AlignCenter, key_);
}

// Layouts squeeze what only hints at its height.
void BigButton::resizeEvent(QResizeEvent* event) {
  QAbstractButton::resizeEvent(event);
  setMinimumHeight(heightForWidth(width()));
}

void BigButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  update();
}

void BigButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  update();
}

}  // namespace stopwalk::rounds
