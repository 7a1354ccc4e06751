#include "app/poster/bundle_html.h"

#include <algorithm>

#include "app/poster/html_parts.h"
#include "app/poster/paged_text.h"
#include "core/audit/wording.h"
#include "core/inspection/round_progress.h"

namespace stopwalk::poster {
namespace {

using inspection::Check;
using inspection::Moment;

constexpr const char* kSubject = "Records of inspections as people entered them; certifies nothing";

QString numbered(std::size_t number) {
  return QString::number(static_cast<qulonglong>(number));
}

QString dayText(inspection::Date day) {
  return escaped(inspection::dayText(day));
}

// `2026-03-02 09:15 +01:00`
QString whenText(const Moment& moment) {
  const QString text = QString::fromStdString(inspection::momentText(moment));
  return text.left(10) + " " + text.mid(11, 5) + " " + text.right(6);
}

QString whenText(const Check& check) {
  return check.is_undated ? escaped(timeText(check)) : whenText(check.at);
}
QString whenText(const inspection::Round& round) {
  return whenText(round.at);
}

QString plain(std::string_view word) {
  return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())).replace('-', ' ');
}

class Html {
 public:
  explicit Html(const BundleMatter& matter)
      : m_(matter), layout_(matter.report.shop.layout()), bundle_(matter.bundle) {}

  QString title() const {
    return "Inspection records: " + escaped(layout_.site.name) + ", " + dayText(bundle_.from) + " to " +
           dayText(bundle_.to);
  }

  QString whole(const QString& plan_src) const {
    return htmlPage(title(),
                    identity() + caution() + summary() + proof() + open() + rounds() + checks() + audit() +
                        "<p><img src=\"" + plan_src +
                        "\" width=\"640\" alt=\"Plan of the layout with the stations' walks\"></p>" +
                        caution(),
                    plan_src.startsWith("data:"));
  }

 private:
  QString identity() const {
    QStringList lines;
    if (!layout_.site.address.empty()) lines << escaped(layout_.site.address);
    QString revision = "The layout gives no revision";
    if (layout_.revision) {
      revision = "Layout as it is now: revision " + QString::number(layout_.revision->number);
      if (!layout_.revision->date.empty()) revision += ", " + escaped(layout_.revision->date);
    }
    lines << revision + "; file " + escaped(m_.report.file) + ", SHA-256 " +
                 escaped(m_.report.shop.about().sha256);
    lines << "Printed " + m_.report.today.toString(Qt::ISODate);
    return "<p>" + lines.join("<br>") + "</p>";
  }

  static QString caution() {
    return cautionHtml(
        "These are records of inspections as people entered them, and an audit of a drawing against chosen "
        "rules; "
        "they certify no machine, stop or room, and are no opinion on compliance.");
  }

  QString summary() const {
    const auto count = [&](inspection::Result result) {
      std::size_t n = 0;
      for (std::size_t i = 0; i < bundle_.checks.size(); ++i)
        n += bundle_.corrected_by[i] == 0 && bundle_.checks[i].result == result;
      return numbered(n);
    };
    return "<h2>Summary</h2><p>Rounds opened in the period: " + numbered(bundle_.rounds.size()) +
           ". Checks on record: " + numbered(bundle_.checks.size()) + "; of those that were not corrected " +
           count(inspection::Result::Pass) + " pass, " + count(inspection::Result::Fail) + " fail, " +
           count(inspection::Result::NotTested) + " not tested, " + count(inspection::Result::NotAccessible) +
           " not accessible." + shortPasses() +
           " Devices that failed and have not passed since: " + numbered(bundle_.failed.size()) +
           ". Actions still to be done: " + numbered(bundle_.open_actions.size()) + ".</p>";
  }

  QString shortPasses() const {
    const auto count = std::ranges::count_if(
        bundle_.checks, [&](const Check& c) { return findShort(bundle_.short_passes, c) != nullptr; });
    return count == 0
               ? QString()
               : " Passes that count for nothing or leave a failure open: " + QString::number(count) + ".";
  }

  QString proof() const {
    const files::LogVerdict verdict = files::verifyLog(m_.log);
    QString text = "<h2>The log</h2><p>" +
                   (m_.report.records ? escaped(m_.report.records->file) : QString()) + ": " +
                   numbered(m_.log.lines) + (m_.log.lines == 1 ? " record" : " records") + ", head hash " +
                   escaped(m_.log.head()) + "<br>";
    text += verdict.line == 0 ? QString("Each record is as it was written, in order.")
                              : "<b>Line " + numbered(verdict.line) +
                                    " is not as it was written: " + escaped(verdict.why) + ".</b>";
    if (const std::string unread = files::unreadText(m_.log); !unread.empty())
      text += " <b>" + escaped(unread) + "</b>";
    return text +
           " Each record carries the hash of the one before it. Held against this printed head, the log "
           "shows "
           "whether a record up to it was changed, removed or put in later. It is no signature, and says "
           "nothing of "
           "whether what was entered is true.</p>";
  }

  QString open() const {
    HtmlTable failed("Failed and not passed since",
                     {"Device", "Machine", "Since", "Last on", "Found by", "Record"});
    for (const inspection::FailedDevice& f : bundle_.failed) {
      const Check* check = m_.log.records.findCheck(f.check, f.device);
      failed.add({escaped(f.device), check ? machinesOf(*check) : "", dayText(f.since), dayText(f.on),
                  escaped(isFinderKnown(f) ? f.found_by : inspection::kUnreadName), numbered(f.check)});
    }
    HtmlTable actions("Still to be done", {"Device", "What", "By whom", "Until", "Record"});
    for (const Check& c : bundle_.open_actions)
      actions.add({escaped(c.device), escaped(c.corrective->what), escaped(c.corrective->owner),
                   c.corrective->due ? dayText(*c.corrective->due) : "no day given", numbered(c.number)});
    return failed.html("No device.") + actions.html("Nothing that was recorded.");
  }

  QString rounds() const {
    HtmlTable table("Rounds opened", {"No.", "Date", "By", "Of", "Devices", "Checked"},
                    {6, 32, 26, 16, 10, 10});
    for (const inspection::Round& r : bundle_.rounds) {
      const auto checked = r.devices.size() - inspection::stillToCheck(r, m_.log.records).size();
      table.add({numbered(r.number), dateOf(r), escaped(r.by), escaped(r.of), numbered(r.devices.size()),
                 numbered(checked)});
    }
    return table.html("No round was opened in this period.");
  }

  QString checks() const {
    HtmlTable table("Checks", {"No.", "Machine", "Date", "People", "Inspector", "What was found", "Layout"},
                    {5, 17, 13, 12, 12, 24, 17});
    for (std::size_t i = 0; i < bundle_.checks.size(); ++i) {
      const Check& c = bundle_.checks[i];
      table.add({numbered(c.number),
                 machinesOf(c) + "<br>" + escaped(c.device) + (c.room.empty() ? "" : ", " + roomName(c.room)),
                 dateOf(c), escaped(c.inspector) + (c.second.empty() ? "" : "; " + escaped(c.second)),
                 escaped(c.inspector), found(c, bundle_.corrected_by[i]),
                 (c.layout.revision ? "rev. " + QString::number(*c.layout.revision) + "<br>" : QString()) +
                     escaped(c.layout.sha256.substr(0, kShortHash))});
    }
    return table.html("No check was recorded in this period.");
  }

  template <class Record>
  static QString dateOf(const Record& record) {
    return whenText(record) +
           (record.entered ? "<br>(entered " + whenText(*record.entered) + ")" : QString());
  }

  QString machinesOf(const Check& c) const {
    if (c.machines.empty()) return "none: it stops nothing";
    QStringList names;
    for (const std::string& id : c.machines) {
      const auto at = std::ranges::find(layout_.machines, id, &layout::Machine::id);
      const bool named = at != layout_.machines.end() && !at->name.empty();
      names << (named ? escaped(at->name) + " (" + escaped(id) + ")" : escaped(id));
    }
    return names.join(", ");
  }

  QString roomName(const std::string& id) const {
    const auto at = std::ranges::find(layout_.rooms, id, &layout::Room::id);
    return escaped(at == layout_.rooms.end() || at->name.empty() ? id : at->name);
  }

  QString found(const Check& c, std::size_t corrected_by) const {
    QStringList parts;
    if (corrected_by != 0) parts << "<b>Corrected by " + numbered(corrected_by) + ".</b>";
    parts << "<b>" + plain(word(c.result)).toUpper() + "</b>";
    if (const auto* pass = findShort(bundle_.short_passes, c))
      parts << "<b>This pass " + escaped(clauseOf(*pass)) + ".</b>";
    if (c.removed) parts << "taken away: no longer there";
    if (c.no_stop) parts << "no stop: only looked at";
    if (c.corrects) parts << inPlaceOf(*c.corrects);
    for (const auto& [test, yes] : c.tested) parts << plain(word(test)) + (yes ? "" : ": no");
    if (const auto mean = inspection::meanOf(c.run_down_s))
      parts << "run-down " + escaped(audit::secondsText(*mean)) +
                   (c.run_down_s.size() > 1 ? " (mean of " + numbered(c.run_down_s.size()) + ")" : "");
    if (!c.note.empty()) parts << escaped(c.note);
    if (c.tagged_out)
      parts << "Machine tagged out by " + escaped(c.tagged_out->by) +
                   (c.tagged_out->until ? ", until " + dayText(*c.tagged_out->until) : "");
    if (!c.action.empty()) parts << "Done at once: " + escaped(c.action);
    if (c.corrective)
      parts << "To be done: " + escaped(c.corrective->what) + ", by " + escaped(c.corrective->owner) +
                   (c.corrective->due ? ", until " + dayText(*c.corrective->due) : "");
    return parts.join("<br>");
  }

  // With what stood there, which is never lost.
  QString inPlaceOf(std::size_t number) const {
    const Check* old = m_.log.records.findCheck(number);
    QString text = "in place of " + numbered(number);
    if (old)
      text += ", which said: " + plain(word(old->result)) + ", " + whenText(*old) + ", " +
              escaped(old->inspector);
    return text;
  }

  QString audit() const {
    const audit::Report& r = m_.report.report;
    const auto verdicts = [&](audit::Verdict v) {
      return QString::number(std::ranges::count(r.stations, v, &audit::StationReport::verdict));
    };
    HtmlTable table("Findings that fail", {"Finding", "Rule and basis"});
    for (const audit::Finding& f : r.findings)
      if (f.severity == audit::Severity::Fail)
        table.add({escaped(f.text), escaped(f.rule) + "<br>" + escaped(audit::basisText(f.basis))});
    return "<h2>The audit of the layout as it is now</h2><p>Profile " + escaped(r.profile) + ": " +
           QString::number(r.machines) + " machines, " + numbered(r.stations.size()) + " stations, " +
           QString::number(r.devices) + " devices. Stations: " + verdicts(audit::Verdict::Fails) +
           " with a failing finding, " + verdicts(audit::Verdict::Warns) + " with a warning, " +
           verdicts(audit::Verdict::Meets) +
           " with neither. Findings: " + QString::number(r.count(audit::Severity::Fail)) + " fail, " +
           QString::number(r.count(audit::Severity::Warn)) + " warn, " +
           QString::number(r.count(audit::Severity::Note)) +
           " note. The whole of it is written by stopwalk report.</p>" + table.html("None.") +
           "<h2>The plan</h2><p>Each station as it was judged, its walk to its stop (dark) and to the phone "
           "(blue, "
           "dashed).</p>";
  }

  const BundleMatter& m_;
  const layout::Layout& layout_;
  const inspection::Bundle& bundle_;
};

}  // namespace

QString bundleHtml(const BundleMatter& matter, const QString& plan_src) {
  return Html(matter).whole(plan_src);
}

QByteArray bundlePdf(const BundleMatter& matter, const QImage& plan, const Paper& paper,
                     const QString& family, QString& why) {
  const QString title =
      "Inspection records: " + QString::fromStdString(matter.report.shop.layout().site.name);
  return pagedPdf({title,
                   kSubject,
                   bundleHtml(matter, "plan"),
                   {{"plan", plan}},
                   title + ", " + QString::fromStdString(inspection::dateText(matter.bundle.from)) + " to " +
                       QString::fromStdString(inspection::dateText(matter.bundle.to)) + ", head " +
                       QString::fromStdString(matter.log.head().substr(0, kShortHash))},
                  paper, family, why);
}

}  // namespace stopwalk::poster
