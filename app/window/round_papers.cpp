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
std::vector<std::string> devicesNow(const RoundPaperSource& source, bool due, Date today) {
  const layout::Layout& layout = *source.of.layout;
  const auto devices =
      planning::inspectedDevices(layout, *source.of.kinds, floor::buildPlan(layout, floor::Hours::Open));
  const auto ids = planning::devicesIn({"", due}, devices, source.read.log.records,
                                       source.of.profile.inspection, today, source.of.failed);
  return planning::asWalked(ids, devices, layout);
}

Date firstOf(const inspection::Records& records, Date today) {
  Date first = today;
  for (const inspection::Round& r : records.rounds) first = std::min(first, r.at.date);
  for (const inspection::Check& c : records.checks) first = std::min(first, c.at.date);
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
  if (!document_.fileHash().empty()) return true;
  return asker_.ask({tr("Save the layout first?"),
                     tr("What is printed of inspections carries the hash of the layout's file. This layout "
                        "is not in "
                        "its file as it is here."),
                     {tr("Save the layout first"), tr("Print nothing")}}) == 0 &&
         files_.save() && !document_.fileHash().empty();
}

QString RoundPapers::pathFor(const QString& title, const QString& what) {
  const QString stem = QFileInfo(document_.path()).fileName().section('.', 0, 0);
  const QString path =
      asker_.pdfToSave(title, QDir(document_.folder()).filePath(stem + "-" + what + QStringLiteral(".pdf")));
  if (path.isEmpty() || !document_.isAt(path)) return path;
  tell(tr("That is the layout itself"), tr("Save it under another name."));
  return {};
}

void RoundPapers::write(const QString& path, const QByteArray& pdf, const QString& why,
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
    result = documents::writeExport(path, {pdf.constData(), static_cast<std::size_t>(pdf.size())}, read_from);
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
  if (!source.of.unreadable.isEmpty()) return tell(tr("There is no sheet"), source.of.unreadable);
  const Date today = records::momentNow().date;
  bool due = false;
  if (!source.round) {
    const int answer =
        asker_.ask({tr("A sheet of which devices?"),
                    tr("No round is being walked. The sheet opens none: it is opened when the sheet is "
                       "entered."),
                    {tr("All devices"), tr("What is due")}});
    if (answer < 0) return;
    due = answer == 1;
  }
  poster::RoundSheetMatter matter{*source.of.layout,
                                  *source.of.kinds,
                                  QFile::encodeName(document_.path()).toStdString(),
                                  source.of.hash,
                                  {},
                                  due ? "due" : "all",
                                  source.round,
                                  source.of.failed,
                                  today};
  poster::Wish wish = source.wish;
  wish.paper = paperOf(wish);
  QStringList shortfalls;
  poster::Bytes pdf;
  emit said(tr("The sheet is being made…"));
  aside_([&] {
    matter.devices = source.round ? source.round->devices : devicesNow(source, due, today);
    if (source.round) matter.of = source.round->of;
    if (matter.devices.empty()) return;
    const poster::RoundSheet sheet = poster::roundSheet(matter, wish);
    shortfalls = sheet.shortfalls;
    pdf = poster::pdfOf(sheet.document);
  });
  emit said({});
  if (matter.devices.empty())
    return tell(tr("There is no sheet"),
                due ? tr("There is no device that is due.") : tr("There is no device to inspect."));
  const QString path = pathFor(tr("Save the sheet of the round as"), tr("round"));
  if (!path.isEmpty()) write(path, pdf.bytes, pdf.why, shortfalls);
}

// Of the period that is asked for, up to today.
std::optional<Date> RoundPapers::firstDay(const inspection::Records& records, Date today) {
  switch (
      asker_.ask({tr("The bundle of which period?"),
                  tr("It holds the records of the period, the audit of the plan, and what is still open."),
                  {tr("The last twelve months"), tr("This year"), tr("All there is")}})) {
    case 0:
      return inspection::monthsAfter(today, -12);
    case 1:
      return Date(today.year() / std::chrono::January / 1);
    case 2:
      return firstOf(records, today);
    default:
      return std::nullopt;
  }
}

void RoundPapers::saveBundle() {
  if (!isSaved()) return;
  const RoundPaperSource source = source_();
  if (!source.read.there || !source.read.unreadable.empty())
    return tell(tr("There are no records"),
                source.trouble.isEmpty() ? tr("Nothing was inspected yet: a bundle is of what was recorded.")
                                         : source.trouble);
  const Date today = records::momentNow().date;
  const auto from = firstDay(source.read.log.records, today);
  if (!from) return;
  emit said(tr("The bundle is being made…"));
  const std::vector<inspection::FailedDevice>& failed = source.of.failed;
  std::unique_ptr<poster::Shop> shop;
  audit::Report report;
  aside_([&] {
    shop = std::make_unique<poster::Shop>(*source.of.layout, *source.of.kinds, source.of.profile,
                                          source.of.hash, failed);
    report = audit::audit(*source.of.layout, *source.of.kinds, source.of.profile, floor::Hours::Open, failed);
  });
  const files::RecordsUsed used = files::recordsUsed(source.read.file, source.read.log, failed,
                                                     planning::notInLayout(failed, *source.of.layout));
  const poster::ReportMatter matter{*shop,
                                    *source.of.kinds,
                                    source.of.profile,
                                    report,
                                    QFile::encodeName(document_.path()).toStdString(),
                                    used,
                                    poster::dayOf(today)};
  const QImage plan = poster::planWithWalks(matter);  // its symbols are remembered for the screen's thread
  QByteArray pdf;
  QString why;
  aside_([&] {
    const auto devices = planning::inspectedDevices(*source.of.layout, *source.of.kinds,
                                                    floor::buildPlan(*source.of.layout, floor::Hours::Open));
    inspection::Bundle bundle =
        planning::bundleOf(source.read.log.records, source.of.profile.inspection, *from, today,
                           planning::asOf(devices, today), *source.of.layout);
    bundle.failed = failed;  // by records that are missed too, as its audit
    pdf = poster::bundlePdf({matter, bundle, source.read.log}, plan, paperOf(source.wish), source.wish.family,
                            why);
  });
  emit said({});
  const QString path = pathFor(tr("Save the bundle as"), tr("records"));
  if (!path.isEmpty()) write(path, pdf, why, {});
}

}  // namespace stopwalk::window
