#include "app/poster/report_html.h"

#include <algorithm>
#include <cmath>

#include "app/plan/day.h"
#include "app/poster/html_parts.h"
#include "core/audit/accepted.h"
#include "core/audit/measure.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::poster {
namespace {

using Table = HtmlTable;

class Html {
 public:
  explicit Html(const ReportMatter& matter)
      : m_(matter),
        open_(matter.shop.open()),
        layout_(matter.shop.layout()),
        today_(plan::dateOf(matter.today)),
        accepted_(audit::acceptedStations(matter.report, today_)) {}

  QString whole(const QString& plan_src) const {
    return htmlPage(
        title(),
        identity() + caution() + summary() +
            "<h2>The plan</h2><p>Each station as it was judged, its walk to its stop (dark) and to the "
            "phone (blue, dashed).</p><p><img src=\"" +
            plan_src + "\" width=\"640\" alt=\"Plan of the layout with the stations' walks\"></p>" +
            findings() + accepted() + stations() + machines() + stops() + tapeChecks() + rulesTable() +
            caution(),
        plan_src.startsWith("data:"));
  }

 private:
  QString title() const { return "Stop audit: " + escaped(layout_.site.name); }

  QString identity() const {
    QStringList lines;
    if (!layout_.site.address.empty()) lines << escaped(layout_.site.address);
    if (layout_.revision) {
      QString revision = "Revision " + QString::number(layout_.revision->number);
      for (const std::string& part : {layout_.revision->date, layout_.revision->by, layout_.revision->reason})
        if (!part.empty()) revision += ", " + escaped(part);
      lines << revision;
    } else {
      lines << "The layout gives no revision.";
    }
    lines << "Layout file " + escaped(m_.file) + ", SHA-256 " + escaped(m_.shop.about().sha256);
    lines << "Profile " + escaped(m_.report.profile) + rulesOff() + "; doors as " +
                 escaped(std::string(audit::word(m_.report.hours))) + "; printed " +
                 m_.today.toString(Qt::ISODate);
    if (const auto& r = m_.records)
      lines << "Inspection records " + escaped(r->file) + ": " + QString::number(r->records) +
                   " taken into account; last hash " + escaped(r->head) + whatIsAmiss(*r);
    else
      lines << "No inspection records were taken into account.";
    return "<p>" + lines.join("<br>") + "</p>";
  }

  static QString whatIsAmiss(const files::RecordsUsed& records) {
    QString text;
    if (!records.fault.empty()) text += "<br>" + escaped(records.fault);
    for (const std::string& id : records.gone)
      text +=
          "<br>" + escaped(id) + " failed and has not passed since, and the layout has no device of this id.";
    return text;
  }

  // What is not asked is not found: told where findings are counted.
  QString rulesOff() const {
    const auto off = std::ranges::count(m_.profile.settings, false, &audit::Setting::on);
    if (off == 0) return "";
    return off == 1 ? "; <b>1 rule is off</b>" : "; <b>" + QString::number(off) + " rules are off</b>";
  }

  static QString caution() {
    return cautionHtml(
        "This report checks a drawing, as drawn and as entered, against chosen rules; it certifies no "
        "machine, stop "
        "or room, and is no opinion on compliance.");
  }

  QString summary() const {
    return "<h2>Summary</h2><p>" + countsHtml(m_.report) + rulesOff() +
           ".</p><p>Where a station meets the rules, the plan as drawn and as entered meets the rules "
           "that were "
           "chosen; nothing more is meant.</p>";
  }

  QString findings() const {
    Table table("Findings", {"", "Finding", "Rule and basis"});
    for (const audit::Finding& f : m_.report.findings) {
      const QString acceptance = acceptanceOf(f);
      table.add({"<b>" + escaped(std::string(audit::word(f.severity))) + "</b>",
                 escaped(f.text) + (acceptance.isEmpty() ? "" : "<br>" + acceptance),
                 escaped(f.rule) + "<br>" + escaped(audit::basisText(f.basis))});
    }
    return table.html(escaped(audit::noFindingsText(m_.report)));
  }

  QString acceptanceOf(const audit::Finding& f) const { return acceptanceHtml(f, today_, m_.report.unit); }

  static QString about(const std::string& subject, const std::string& which) {
    if (which.empty()) return escaped(subject);
    return escaped(subject + " " + (layout::isWhichWord(which) ? which : "(" + which + ")"));
  }

  QString accepted() const {
    Table table("Accepted findings", {"Rule", "About", "Why, by whom, until when"});
    for (const audit::Finding& f : m_.report.findings)
      if (f.accepted) table.add({escaped(f.rule), about(f.subject, f.which), acceptanceOf(f)});
    for (const layout::AcceptedFinding& a : audit::notNeeded(layout_.accepted_findings, m_.report.findings))
      table.add({escaped(a.rule), about(a.subject, a.which),
                 "No such finding any more. " +
                     escaped(audit::withCapital(audit::acceptedText({a.reason, a.by, a.until}, today_)))});
    return table.html("None.");
  }

  QString walk(const audit::Nearest& n) const {
    switch (n.status) {
      case audit::Status::AtHand:
        return "at hand";
      case audit::Status::Walk:
      case audit::Status::Narrow:
        return escaped(audit::lengthCell(n.walk_m.value_or(0), m_.report.unit)) +
               (n.status == audit::Status::Narrow ? ", narrow" : "");
      default:
        return escaped(std::string(audit::word(n.status)));
    }
  }

  QString stations() const {
    Table table("Stations", {"Station", "", "Nearest stop", "Walk", "At rest after", "Phone", "Clear width"});
    for (std::size_t i = 0; i < accepted_.size(); ++i) {
      const audit::StationReport& s = m_.report.stations[i];
      table.add(
          {escaped(s.name), escaped(std::string(audit::word(s.verdict))) + (accepted_[i] ? ", accepted" : ""),
           escaped(s.stop.name), walk(s.stop),
           s.stop.seconds && s.stop.run_down_s ? escaped(audit::secondsCell(*s.stop.seconds)) : "not known",
           walk(s.phone),
           s.phone.clear_width_m ? escaped(audit::lengthCell(*s.phone.clear_width_m, m_.report.unit)) : ""});
    }
    return table.html("The layout has no station.");
  }

  bool isOutOfOrder(const audit::DeviceEntry& device) const {
    return open_.relation.isOutOfOrder(static_cast<std::size_t>(&device - open_.devices.data()));
  }

  QString machines() const {
    Table table("Machines", {"Machine", "Room", "Stations", "Stops on it", "After the stop"});
    for (std::size_t i = 0; i < layout_.machines.size(); ++i) {
      const layout::Machine& machine = layout_.machines[i];
      QStringList stations, devices;
      for (const layout::Station& s : machine.stations) stations << escaped(std::string(audit::word(s.role)));
      for (const audit::DeviceEntry& d : open_.devices)
        if (d.machine == i && d.kind->counts_as_stop)
          devices << escaped(d.kind->label) + (isOutOfOrder(d) ? " (out of order)" : "");
      table.add({escaped(open_.name(machine)),
                 open_.machine_rooms[i] ? escaped(open_.roomName(*open_.machine_rooms[i])) : "none",
                 stations.join(", "), devices.isEmpty() ? "none" : devices.join(", "),
                 escaped(machine.after_stop)});
    }
    return table.html("The layout has no machine.");
  }

  QString stops() const {
    Table table("Stops and starts", {"Device", "Kind", "Stops", "Height", "Run-down"});
    for (std::size_t d = 0; d < open_.devices.size(); ++d) {
      const audit::DeviceEntry& device = open_.devices[d];
      std::vector<std::string> stopped;
      for (std::size_t i = 0; i < layout_.machines.size(); ++i)
        if (open_.relation.stops(d, i)) stopped.push_back(open_.name(layout_.machines[i]));
      const bool counts = device.kind->counts_as_stop;
      table.add(
          {escaped(device.id), escaped(device.kind->label),
           !counts ? "nothing: it is no stop"
           : open_.relation.isOutOfOrder(d)
               ? "counted as no stop: failed on " + escaped(inspection::dayText(open_.failures[d]->on)) +
                     " and not passed since"
           : stopped.empty() ? "nothing"
                             : escaped(audit::listed(stopped, 6)),
           device.device->height ? escaped(audit::lengthText(*device.device->height / 1000, m_.report.unit))
                                 : "not given",
           device.device->run_down ? escaped(audit::secondsText(*device.device->run_down)) : "not given"});
    }
    return table.html("The layout has no device.");
  }

  QString tapeChecks() const {
    Table table("Tape checks", {"From", "To", "Taped", "Measured on the plan", "When, by whom"});
    for (const layout::TapeCheck& t : layout_.tape_checks) {
      const audit::Measured measured = audit::measure(layout_, m_.kinds, t.from, t.to);
      table.add({escaped(t.from), escaped(t.to), escaped(audit::lengthText(t.taped / 1000, m_.report.unit)),
                 measured.walk.found()
                     ? escaped(audit::lengthText(measured.walk.length_mm / 1000, m_.report.unit))
                     : escaped(measured.why_not + measured.unknown),
                 escaped(t.date) + (t.by.empty() ? "" : ", " + escaped(t.by))});
    }
    return table.html("Nobody has yet held a walk of the plan against a tape.");
  }

  QString rulesTable() const {
    Table table("Rules", {"Rule", "", "Limits", "Basis"});
    for (const audit::Rule* rule : audit::rules()) {
      const audit::Setting& setting = m_.profile.of(*rule);
      QStringList limits;
      for (std::size_t i = 0; i < rule->limits.size(); ++i)
        limits << escaped(rule->limits[i].name) + ": " + QString::number(setting.limits[i]) + " " +
                      escaped(rule->limits[i].unit);
      table.add({escaped(rule->id) + "<br>" + escaped(rule->finds),
                 setting.on ? escaped(std::string(audit::word(setting.severity))) : "off",
                 limits.join("<br>"), escaped(audit::basisText(setting.basis))});
    }
    return table.html("");
  }

  const ReportMatter& m_;
  const audit::Context& open_;
  const layout::Layout& layout_;
  const inspection::Date today_;
  const std::vector<bool> accepted_;  // of the stations
};

}  // namespace

QString reportHtml(const ReportMatter& matter, const QString& plan_src) {
  return Html(matter).whole(plan_src);
}

}  // namespace stopwalk::poster
