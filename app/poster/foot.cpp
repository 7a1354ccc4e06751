#include <QLocale>
#include <algorithm>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/furniture.h"
#include "app/poster/qr_code.h"
#include "app/poster/texts.h"
#include "core/files/sha256.h"

namespace stopwalk::poster {
namespace {

constexpr double kCode_mm = 26;
constexpr double kBar_mm = 100;
constexpr double kIdentity_mm = 2.5;
constexpr double kSmall_mm = kLeastLetter_mm * 1.02;

QString revisionText(const layout::Layout& layout, const Language& language) {
  if (!layout.revision) return language.say(texts::kNoRevision);
  const QString number = language.say(texts::kRevision).arg(layout.revision->number);
  return layout.revision->date.empty() ? number
                                       : number + ", " + QString::fromStdString(layout.revision->date);
}

QString shortHash(const About& about, const Language& language) {
  const std::string hash = posterHash(about);
  return hash.empty() ? language.say(texts::kNotSaved) : QString::fromStdString(hash.substr(0, kShortHash));
}

QString identity(const Content& content, const About& about, const Language& language) {
  QStringList parts;
  if (!about.layout.site.name.empty()) parts << QString::fromStdString(about.layout.site.name);
  parts << QString::fromStdString(content.room_name) << revisionText(about.layout, language)
        << language.say(texts::kLayout).arg(shortHash(about, language));
  return parts.join("  |  ");
}

void checkBar(Block& block, double left, double y) {
  block.marks.push_back(drawn(linePath({left, y}, {left + kBar_mm, y}), inks().ink, 0.35));
  for (const double x : {0.0, kBar_mm / 2, kBar_mm})
    block.marks.push_back(drawn(linePath({left + x, y - 1.2}, {left + x, y + 1.2}), inks().ink, 0.35));
}

}  // namespace

QString sizesText(const char* letters, double large_mm, double others_mm, double signs_mm,
                  const Language& language) {
  // Rounded down: not more is promised than there is.
  const QLocale locale(QString::fromStdString(language.key()));
  const auto number = [&](double value) {
    return locale.toString(std::floor(value * 10 + 1e-6) / 10, 'g', 4);
  };
  const QString said = language.say(letters).arg(number(large_mm), number(readTo_m(large_mm)),
                                                 number(others_mm), number(readTo_m(others_mm)));
  if (signs_mm == 0) return said;
  return said + ' ' + language.say(texts::kSignSizes).arg(number(signs_mm), number(recognisedTo_m(signs_mm)));
}

std::string posterHash(const About& about) {
  if (about.sha256.empty() || about.out_of_order.empty()) return about.sha256;
  std::string said = about.sha256;
  for (const std::string& device : about.out_of_order) said += "\nout of order: " + device;
  return files::sha256(said);
}

QString codeText(const Content& content, const About& about) {
  QStringList lines{"Stopwalk poster 1"};
  if (!about.layout.site.name.empty())
    lines << "shop: " + QString::fromStdString(about.layout.site.name).left(80);
  lines << "room: " + QString::fromStdString(content.room_name).left(80);
  lines << revisionText(about.layout, Language("en"));
  if (about.sha256.empty())
    lines << "layout: NOT SAVED";
  else if (about.out_of_order.empty())
    lines << "layout sha256: " + QString::fromStdString(about.sha256);
  else
    lines << QStringLiteral("out of order: %1").arg(about.out_of_order.size())
          << "layout and out of order sha256: " + QString::fromStdString(posterHash(about));
  return lines.join('\n');
}

Block footOf(const Content& content, const About& about, const Languages& languages, const Lettering& letters,
             double width, const QString& sizes) {
  Block block;
  Writer writer(block, letters);
  const double right = width - kCode_mm - 3;
  writer.gap(1);
  writer.paragraph(identity(content, about, languages.front()), 0, right, kIdentity_mm, true);
  if (about.faults > 0)
    for (const QString& faults : sayEach(languages, texts::kFaults))
      writer.paragraph(faults.arg(about.faults), 0, right, kIdentity_mm * 1.4, true, inks().stop_sign);
  for (const QString& caution : sayEach(languages, texts::kCaution))
    writer.paragraph(caution, 0, right, kSmall_mm);
  writer.paragraph(sizes, 0, right, kSmall_mm, false, inks().quiet_ink);
  writer.gap(2);
  checkBar(block, 0, block.height);
  block.height -= Lettering::lineOf(kSmall_mm) / 2;
  writer.paragraph(languages.front().say(texts::kCheckBar), kBar_mm + 3, right, kSmall_mm);
  block.height = std::max(block.height, kCode_mm + 1);

  block.marks.push_back(drawn(linePath({0, 0}, {width, 0}), inks().ink, 0.35));
  return block;
}

Mark footCode(const Content& content, const About& about, double width) {
  return filled(qrCode(codeText(content, about), {width - kCode_mm, 1, kCode_mm, kCode_mm}).path, Qt::black);
}

}  // namespace stopwalk::poster
