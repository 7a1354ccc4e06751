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
#include "core/planning/round_plan.h"

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

  // Of the round that is walked; without one, of all devices, of what is due, or of what is chosen elsewhere.
  void saveSheet();
  // As if a round were opened now.
  void saveSheetOf(const planning::RoundScope& scope, const inspection::RoundWalk& walk);
  // PDF or CSV, by the name's end.
  void saveBundle();

 signals:
  void said(const QString& sentence);
  void choiceWanted();  // of what a sheet is, by the form of a new round

 private:
  bool isSaved();
  struct Period {
    inspection::Date from{}, to{};
  };
  std::optional<Period> periodAsked(const inspection::Records& records, inspection::Date today);
  std::optional<Period> periodTyped(Period offered);
  void makeSheet(const RoundPaperSource& source, const planning::RoundScope& scope,
                 const inspection::RoundWalk& walk);
  void writeBundle(const RoundPaperSource& source, const Period& period, inspection::Date today,
                   const QString& path);
  QString pathFor(const QString& title, const QString& what, const QStringList& endings);
  void write(const QString& path, const QByteArray& bytes, const QString& why, const QStringList& shortfalls);
  void tell(const QString& title, const QString& text, const QString& details = {});

  Document& document_;
  FileFlow& files_;
  Asker& asker_;
  MakeSource source_;
  Aside aside_;
};

}  // namespace stopwalk::window
