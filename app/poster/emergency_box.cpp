#include <QLocale>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/furniture.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kPad_mm = 3;
const char* const kToFillIn = "____________________";  // for a pen, where the layout does not say

class Box {
 public:
  Box(const Languages& languages, const Lettering& letters, double width, double cap)
      : languages_(languages), writer_(block_, letters), right_(width - kPad_mm), width_(width), cap_(cap) {}

  Block make(const Content& content, const layout::Site& site) {
    const double sign = 2.4 * cap_;
    block_.height = kPad_mm;
    block_.marks.push_back(Sign{"phone", plan::Ground::Phone, QRectF(kPad_mm, kPad_mm, sign, sign)});
    writer_.gap((sign - Lettering::lineOf(1.25 * cap_)) / 2);
    writer_.paragraph(sayEach(languages_, texts::kEmergency).join(" / "), kPad_mm + sign + cap_, right_,
                      1.25 * cap_, true, inks().phone);
    block_.height = std::max(block_.height, kPad_mm + sign) + 1.5;

    for (const QString& text : sayEach(languages_, texts::kStopFirst)) say(text, true);
    field(texts::kDial, site.emergency_call, true);
    field(texts::kSay, site.address, false);
    field(texts::kMeet, site.meet_responders_at, false);
    for (const Language& language : languages_) phone(content, language);
    block_.height += kPad_mm;

    Shape frame = drawn(rectanglePath({0.5, 0.5, width_ - 1, block_.height - 1}), inks().phone, 1);
    block_.marks.insert(block_.marks.begin(), frame);
    block_.height += 2;
    return std::move(block_);
  }

 private:
  void say(const QString& text, bool bold = false) { writer_.paragraph(text, kPad_mm, right_, cap_, bold); }

  // The shop's own words once, after what they are in each language.
  void field(const char* text, const std::string& value, bool bold) {
    const QString said = value.empty() ? QString::fromUtf8(kToFillIn) : QString::fromStdString(value);
    QStringList labels = sayEach(languages_, text);
    const QString last = labels.takeLast();
    for (QString& label : labels) label = label.arg(QString()).trimmed();
    labels << last.arg(said);
    say(labels.join(" / "), bold);
  }

  void phone(const Content& content, const Language& language) {
    say(wayText(content.phone, texts::kPhoneWay, texts::kPhoneWayThrough, texts::kNoWay, language));
    if (content.phone_after_hours)
      say(wayText(*content.phone_after_hours, texts::kPhoneAfterHours, texts::kPhoneAfterHoursThrough,
                  texts::kNoWayAfterHours, language));
  }

  static QString wayText(const PhoneWay& way, const char* here, const char* through, const char* none,
                         const Language& language) {
    if (way.status == audit::Status::None) return language.say(texts::kNoPhone);
    if (way.path.empty()) return language.say(none);
    QStringList rooms;
    for (const std::string& room : way.through) rooms << QString::fromStdString(room);
    QString said = rooms.isEmpty()
                       ? language.say(here).arg(walkText(way.length_mm, language))
                       : language.say(through).arg(walkText(way.length_mm, language), rooms.join(", "));
    if (way.status == audit::Status::Narrow) said += ' ' + language.say(texts::kNarrow);
    return said;
  }

  const Languages& languages_;
  Block block_;
  Writer writer_;
  double right_, width_, cap_;
};

}  // namespace

QString walkText(double length_mm, const Language& language) {
  const double metres = std::ceil(length_mm / 100 - 1e-6) / 10;
  const double feet = std::ceil(length_mm / 304.8 - 1e-6);
  const QString said = QLocale(QString::fromStdString(language.key())).toString(metres, 'f', 1);
  return QStringLiteral("%1 m (%2 ft)").arg(said).arg(feet, 0, 'f', 0);
}

Block emergencyBox(const Content& content, const About& about, const Languages& languages,
                   const Lettering& letters, double width, double cap) {
  return Box(languages, letters, width, cap).make(content, about.layout.site);
}

}  // namespace stopwalk::poster
