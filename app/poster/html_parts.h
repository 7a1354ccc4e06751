#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

#include "core/audit/report.h"
#include "core/inspection/moment.h"

// What the report and the bundle of records are written with.
namespace stopwalk::poster {

QString escaped(const std::string& text);

// A whole page; on a screen it has margins of its own.
QString htmlPage(const QString& title, const QString& body, bool on_screen);

// What such a document is, and is not: `what` it does, then what comes before it.
QString cautionHtml(const QString& what);

// Who lets a finding stand, or may mean to, or why that is over; empty where nobody does.
QString acceptanceHtml(const audit::Finding& finding, inspection::Date today, layout::LengthUnit unit);

// How many of everything there are, and how they stand, in sentences.
QString countsHtml(const audit::Report& report);

// One table; its head is repeated on each page that it reaches.
class HtmlTable {
 public:
  // `widths`: of the columns, in hundredths of the whole; none: as their words are.
  HtmlTable(QString title, QStringList head, std::vector<int> widths = {})
      : title_(std::move(title)), head_(std::move(head)), widths_(std::move(widths)) {}
  void add(const QStringList& cells) { rows_ << "<tr><td>" + cells.join("</td><td>") + "</td></tr>"; }
  QString html(const QString& if_empty) const;

 private:
  QString title_;
  QStringList head_;
  std::vector<int> widths_;
  QStringList rows_;
};

}  // namespace stopwalk::poster
