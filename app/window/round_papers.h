#pragma once

#include <QObject>
#include <functional>

#include "app/poster/poster.h"
#include "app/records/records_file.h"
#include "app/window/aside.h"
#include "app/window/asker.h"
#include "app/window/document.h"
#include "app/window/file_flow.h"
#include "app/window/poster/poster_source.h"

namespace stopwalk::window {

// What papers of inspections are made from.
struct RoundPaperSource {
  PosterSource of;
  records::ReadRecords read;
  std::optional<inspection::Round> round;  // that is walked; none: none is
  QString trouble;                         // with the records, in a sentence; empty: all is well
  poster::Wish wish;  // of posters: its language, letters, and whether Letter is used here
};

// Saves as PDF what is printed of inspections, with the questions that this asks: the sheet to walk a round
// with, and the bundle of a period for an insurer.
class RoundPapers : public QObject {
  Q_OBJECT

 public:
  // Made anew when it is asked for: saving the layout changes it.
  using MakeSource = std::function<RoundPaperSource()>;

  RoundPapers(Document& document, FileFlow& files, Asker& asker, MakeSource source,
              QObject* parent = nullptr);

  // Of the round that is walked; without one, of all devices or of what is due.
  void saveSheet();
  void saveBundle();

 signals:
  void said(const QString& sentence);

 private:
  bool isSaved();
  std::optional<inspection::Date> firstDay(const inspection::Records& records, inspection::Date today);
  QString pathFor(const QString& title, const QString& what);
  void write(const QString& path, const QByteArray& pdf, const QString& why, const QStringList& shortfalls);
  void tell(const QString& title, const QString& text, const QString& details = {});

  Document& document_;
  FileFlow& files_;
  Asker& asker_;
  MakeSource source_;
  Aside aside_;
};

}  // namespace stopwalk::window
