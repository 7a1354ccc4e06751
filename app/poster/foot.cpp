#include <QLocale>
#include <algorithm>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/furniture.h"
#include "app/poster/qr_code.h"
#include "app/poster/texts.h"

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

QString shortHash(const About& about) {
  return QString::fromStdString(about.sha256.substr(0, kShortHash));
}

QString identity(const Content& content, const About& about, const Language& language) {
  QStringList parts;
  if (!about.layout.site.name.empty()) parts << QString::fromStdString(about.layout.site.name);
  parts << QString::fromStdString(content.room_name) << revisionText(about.layout, language)
        << language.say(texts::kLayout).arg(shortHash(about));
  return parts.join("  |  ");
}

QString sizesText(const Language& language, double title_cap, const Sizes& sizes) {
  // Rounded down: not more is promised than there is.
  const QLocale locale(QString::fromStdString(language.key()));
  const auto number = [&](double value) {
    return locale.toString(std::floor(value * 10 + 1e-6) / 10, 'g', 4);
  };
  return language.say(texts::kSizes)
      .arg(number(title_cap), number(readTo_m(title_cap)), number(sizes.table_cap),
           number(readTo_m(sizes.table_cap)), number(sizes.sign), number(recognisedTo_m(sizes.sign)));
}

void checkBar(Block& block, double left, double y) {
  block.marks.push_back(drawn(linePath({left, y}, {left + kBar_mm, y}), inks().ink, 0.35));
  for (const double x : {0.0, kBar_mm / 2, kBar_mm})
    block.marks.push_back(drawn(linePath({left + x, y - 1.2}, {left + x, y + 1.2}), inks().ink, 0.35));
}

}  // namespace

QString codeText(const Content& content, const About& about) {
  QStringList lines{"Stopwalk poster 1"};
  if (!about.layout.site.name.empty())
    lines << "shop: " + QString::fromStdString(about.layout.site.name).left(80);
  lines << "room: " + QString::fromStdString(content.room_name).left(80);
  lines << revisionText(about.layout, Language("en"));
  lines << "layout sha256: " + QString::fromStdString(about.sha256);
  return lines.join('\n');
}

Block footOf(const Content& content, const About& about, const Languages& languages, const Lettering& letters,
             double width, double title_cap, const Sizes& sizes) {
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
  writer.paragraph(sizesText(languages.front(), title_cap, sizes), 0, right, kSmall_mm, false,
                   inks().quiet_ink);
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
