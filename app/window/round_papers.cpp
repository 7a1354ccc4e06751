#include "app/window/round_papers.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/documents/safe_write.h"
#include "app/poster/bundle_html.h"
#include "app/poster/day.h"
#include "app/poster/round_sheet.h"
#include "app/poster/write_pages.h"
#include "core/audit/audit.h"
#include "core/files/bundle_csv.h"
#include "core/planning/round_order.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

using inspection::Date;

// Sheets and bundles are A4, or Letter where posters are on American paper.
const poster::Paper& paperOf(const poster::Wish& wish) {
  const std::string key = wish.paper.key;
  return *poster::paperOf(key == "letter" || key == "tabloid" ? "letter" : "a4");
}

// What a round opened now would go over, in the order of the walk.
planning::RoundOrder orderNow(const RoundPaperSource& source, const planning::RoundScope& scope,
                              const inspection::RoundWalk& walk, const inspection::Now& now) {
  const layout::Layout& layout = *source.of.layout;
  const auto devices =
      planning::inspectedDevices(layout, *source.of.kinds, floor::buildPlan(layout, floor::Hours::Open));
  const auto ids = planning::devicesIn(scope, devices, source.read.log.records, source.of.profile.inspection,
                                       now, source.of.failed);
  return planning::asWalked(ids, walk, layout, *source.of.kinds);
}

// Puts into a sheet its devices, and the walk past them if that is the shortest that is found now.
void putOrder(poster::RoundSheetMatter& matter, planning::RoundOrder order) {
  if (matter.round && order.devices != matter.round->devices) {
    matter.devices = matter.round->devices;
    return;
  }
  matter.devices = std::move(order.devices);
  matter.found = std::move(order.walk);
}

Date firstOf(const inspection::Records& records, Date today) {
  Date first = today;
  for (const inspection::Round& r : records.rounds) first = std::min(first, r.at.date);
  for (const inspection::Check& c : records.checks)
    if (!c.is_undated) first = std::min(first, c.at.date);
  return first;
}

}  // namespace

RoundPapers::RoundPapers(Document& document, FileFlow& files, Asker& asker, MakeSource source,
                         QObject* parent)
    : QObject(parent), document_(document), files_(files), asker_(asker), source_(std::move(source)) {}

void RoundPapers::tell(const QString& title, const QString& text, const QString& details) {
  asker_.ask({title, text, {tr("OK")}, details});
}

// What is on paper is of a file that can be named by its hash.
bool RoundPapers::isSaved() {
  files_.endTyping();
  if (!document_.fileHash().empty()) return true;
  return asker_.ask({tr("Save the layout first?"),
                     tr("What is printed of inspections carries the hash of the layout's file. This layout "
                        "is not in "
                        "its file as it is here."),
                     {tr("Save the layout first"), tr("Print nothing")}}) == 0 &&
         files_.save() && !document_.fileHash().empty();
}

QString RoundPapers::pathFor(const QString& title, const QString& what, const QStringList& endings) {
  const QString stem = QFileInfo(document_.path()).fileName().section('.', 0, 0);
  const QString path = asker_.paperToSave(
      title, QDir(document_.folder()).filePath(stem + "-" + what + "." + endings.first()), endings);
  if (path.isEmpty() || !document_.isAt(path)) return path;
  tell(tr("That is the layout itself"), tr("Save it under another name."));
  return {};
}

void RoundPapers::write(const QString& path, const QByteArray& bytes, const QString& why,
                        const QStringList& shortfalls) {
  const auto refuse = [&](const QString& reason) {
    const QString title = tr("%1 was not written").arg(QFileInfo(path).fileName());
    emit said(title + ".");
    tell(title, reason);
  };
  if (!why.isEmpty()) return refuse(why);
  documents::WriteResult result;
  const QStringList read_from = document_.readFrom();
  aside_([&] {
    result =
        documents::writeExport(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())}, read_from);
  });
  if (result.written == documents::Written::No) return refuse(result.why);
  emit said(tr("Written: %1").arg(path));
  if (result.written == documents::Written::Unsure)
    return tell(tr("Written, but perhaps not for good"), result.why);
  if (!shortfalls.isEmpty())
    tell(tr("The sheet is written"), tr("What it does not do as it should is below."), shortfalls.join('\n'));
}

void RoundPapers::saveSheet() {
  if (!isSaved()) return;
  const RoundPaperSource source = source_();
  if (source.round) return makeSheet(source, {}, source.round->walk);
  const int answer = asker_.ask(
      {tr("A sheet of which devices?"),
       tr("No round is being walked. The sheet opens none: it is opened when the sheet is entered. One room, "
          "other doors or another beginning are chosen in the form of a new round."),
       {tr("All devices"), tr("What is due"), tr("Choose…")}});
  if (answer == 2) return emit choiceWanted();
  if (answer >= 0) makeSheet(source, {"", answer == 1}, {});
}

void RoundPapers::saveSheetOf(const planning::RoundScope& scope, const inspection::RoundWalk& walk) {
  if (!isSaved()) return;
  RoundPaperSource source = source_();
  source.round.reset();
  makeSheet(source, scope, walk);
}

void RoundPapers::makeSheet(const RoundPaperSource& source, const planning::RoundScope& scope,
                            const inspection::RoundWalk& walk) {
  if (!source.of.unreadable.isEmpty()) return tell(tr("There is no sheet"), source.of.unreadable);
  const Date today = records::momentNow().date;
  poster::RoundSheetMatter matter{*source.of.layout,
                                  *source.of.kinds,
                                  QFile::encodeName(document_.path()).toStdString(),
                                  source.of.hash,
                                  {},
                                  source.round ? source.round->of : planning::wordOf(scope),
                                  source.round,
                                  source.of.failed,
                                  today,
                                  walk};
  poster::Wish wish = source.wish;
  wish.paper = paperOf(wish);
  QStringList shortfalls;
  poster::Bytes pdf;
  bool can_begin = true;
  emit said(tr("The sheet is being made…"));
  aside_([&] {
    planning::RoundOrder order =
        source.round ? planning::asWalked(source.round->devices, walk, matter.layout, matter.kinds)
                     : orderNow(source, scope, walk, records::momentNow());
    can_begin = order.no_start.empty();
    putOrder(matter, std::move(order));
    if (matter.devices.empty()) return;
    const poster::RoundSheet sheet = poster::roundSheet(matter, wish);
    shortfalls = sheet.shortfalls;
    pdf = poster::pdfOf(sheet.document);
  });
  emit said({});
  if (matter.devices.empty())
    return tell(tr("There is no sheet"),
                !can_begin  ? tr("Nobody can stand where the walk is to begin: choose another place.")
                : scope.due ? tr("There is no device that is due.")
                            : tr("There is no device to inspect."));
  const QString path = pathFor(tr("Save the sheet of the round as"), tr("round"), {"pdf"});
  if (!path.isEmpty()) write(path, pdf.bytes, pdf.why, shortfalls);
}

std::optional<RoundPapers::Period> RoundPapers::periodAsked(const inspection::Records& records, Date today) {
  switch (
      asker_.ask({tr("The bundle of which period?"),
                  tr("It holds the records of the period, the audit of the plan, and what is still open."),
                  {tr("The last twelve months"), tr("This year"), tr("All there is"), tr("From … to …")}})) {
    case 0:
      return Period{inspection::monthsAfter(today, -12), today};
    case 1:
      return Period{Date(today.year() / std::chrono::January / 1), today};
    case 2:
      return Period{firstOf(records, today), today};
    case 3:
      return periodTyped({firstOf(records, today), today});
    default:
      return std::nullopt;
  }
}

// Asks until both are days, or the form is closed.
std::optional<RoundPapers::Period> RoundPapers::periodTyped(Period offered) {
  Form form{tr("The bundle of which period?"),
            tr("Both days belong to it."),
            {tr("From"), tr("To")},
            {QString::fromStdString(inspection::dateText(offered.from)),
             QString::fromStdString(inspection::dateText(offered.to))},
            tr("Make the bundle")};
  while (const auto typed = asker_.fill(form)) {
    const auto from = inspection::parseDate(typed->value(0).toStdString()),
               to = inspection::parseDate(typed->value(1).toStdString());
    if (from && to && *from <= *to) return Period{*from, *to};
    form.values = *typed;
    form.text = tr("Two days as 2026-03-02 are expected, the earlier first. Both belong to it.");
  }
  return std::nullopt;
}

void RoundPapers::saveBundle() {
  if (!isSaved()) return;
  RoundPaperSource source = source_();
  if (!source.read.there || !source.read.unreadable.empty())
    return tell(tr("There are no records"),
                source.trouble.isEmpty() ? tr("Nothing was inspected yet: a bundle is of what was recorded.")
                                         : source.trouble);
  const Date today = records::momentNow().date;
  const auto period = periodAsked(source.read.log.records, today);
  if (!period) return;
  const QString path = pathFor(tr("Save the bundle as"), tr("records"), {"pdf", "csv"});
  if (path.isEmpty()) return;
  if (!path.endsWith(".pdf", Qt::CaseInsensitive) && !path.endsWith(".csv", Qt::CaseInsensitive))
    return tell(tr("%1 was not written").arg(QFileInfo(path).fileName()),
                tr("The name says what it is: it ends in .pdf for a document, in .csv for a table."));
  source = source_();  // time has passed
  if (!source.read.unreadable.empty()) return tell(tr("There are no records"), source.trouble);
  writeBundle(source, *period, today, path);
}

void RoundPapers::writeBundle(const RoundPaperSource& source, const Period& period, Date today,
                              const QString& path) {
  emit said(tr("The bundle is being made…"));
  const layout::Layout& layout = *source.of.layout;
  const std::vector<inspection::FailedDevice>& failed = source.of.failed;
  const std::string file = QFile::encodeName(document_.path()).toStdString();
  std::unique_ptr<poster::Shop> shop;
  audit::Report report;
  inspection::Bundle bundle;
  aside_([&] {
    shop =
        std::make_unique<poster::Shop>(layout, *source.of.kinds, source.of.profile, source.of.hash, failed);
    report = audit::audit(layout, *source.of.kinds, source.of.profile, floor::Hours::Open, failed);
    const auto devices =
        planning::inspectedDevices(layout, *source.of.kinds, floor::buildPlan(layout, floor::Hours::Open));
    bundle = planning::bundleOf(source.read.log.records, source.of.profile.inspection, period.from, period.to,
                                planning::asOf(devices, records::momentNow()), layout);
    bundle.failed = failed;  // by records that are missed too, as its audit
  });
  const files::RecordsUsed used =
      files::recordsUsed(source.read.file, source.read.log, failed, planning::notInLayout(failed, layout));
  if (path.endsWith(".csv", Qt::CaseInsensitive)) {
    emit said({});
    const std::string table = files::bundleCsv(bundle, {file, source.of.hash, report, used});
    return write(path, QByteArray::fromStdString(table), {}, {});
  }
  const poster::ReportMatter matter{*shop, *source.of.kinds,    source.of.profile, report, file,
                                    used,  poster::dayOf(today)};
  const QImage plan = poster::planWithWalks(matter);  // its symbols are remembered for the screen's thread
  QByteArray pdf;
  QString why;
  aside_([&] {
    pdf = poster::bundlePdf({matter, bundle, source.read.log}, plan, paperOf(source.wish), source.wish.family,
                            why);
  });
  emit said({});
  write(path, pdf, why, {});
}

}  // namespace stopwalk::window
