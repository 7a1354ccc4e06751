#include "app/poster/poster_shortfalls.h"

namespace stopwalk::poster {
namespace {

QStringList missingOf(const layout::Site& site) {
  QStringList missing;
  if (site.emergency_call.empty()) missing << Told::tr("what to dial (`emergency_call`)");
  if (site.address.empty()) missing << Told::tr("the address to say (`address`)");
  if (site.meet_responders_at.empty())
    missing << Told::tr("where to meet the responders (`meet_responders_at`)");
  return missing;
}

}  // namespace

QString emptyBoxes(const Document& document) {
  const Lettering letters(document.family);
  QString missing;
  for (const Page& page : document.pages)
    for (const Mark& mark : page.marks)
      if (const Text* text = std::get_if<Text>(&mark))
        for (const char32_t sign : letters.missingFrom(text->text).toStdU32String())
          if (const QString letter = QString::fromUcs4(&sign, 1); !missing.contains(letter))
            missing += letter;
  return missing.isEmpty()
             ? QString()
             : Told::tr("no font here has these letters, which print as empty boxes: %1").arg(missing);
}

std::vector<Shortfall> shortfallsOf(const Document& document, const PlanPicture& plan, const Content& content,
                                    const About& about, const Wish& wish) {
  std::vector<Shortfall> shortfalls;
  const auto add = [&](const QString& text) { shortfalls.push_back({text, false}); };
  const Lettering letters(wish.family);
  if (const std::size_t pages = document.pages.size(); pages > 1)
    add(Told::tr("the table does not fit beside the plan on %1: it goes on to %2 pages")
            .arg(wish.paper.name)
            .arg(pages));
  if (const QString boxes = emptyBoxes(document); !boxes.isEmpty()) add(boxes);
  if (!plan.off_plan.isEmpty())
    add(Told::tr("drawn outside the room, and so in the table only, without a sign: %1")
            .arg(plan.off_plan.join(", ")));
  if (!plan.unnamed.isEmpty())
    add(Told::tr("no place on the plan for the name of %1; the table has it").arg(plan.unnamed.join(", ")));
  const QSizeF page = document.pages.front().size;
  if (const double cap = roomCap(content, wish.languages, letters, page); cap < titleCap(page))
    add(Told::tr("the room's name is too long for the header's letters: it is in letters of %1 mm")
            .arg(cap, 0, 'f', 1));
  if (const QStringList missing = missingOf(about.layout.site); !missing.isEmpty())
    add(Told::tr("the layout's `site` does not say %1; the poster has a line to fill in by hand")
            .arg(missing.join(", ")));
  if (!about.layout.revision)
    add(Told::tr(
        "the layout has no `revision`: nobody can tell this poster from an older one but by its hash"));
  return shortfalls;
}

}  // namespace stopwalk::poster
