#pragma once

#include <QObject>
#include <functional>
#include <vector>

#include "app/window/aside.h"
#include "app/window/asker.h"
#include "app/window/document.h"
#include "app/window/file_flow.h"
#include "app/window/poster/poster_source.h"

namespace stopwalk::window {

// Posters that are to be made, to be saved or printed.
struct PosterOrder {
  struct Wanted {
    std::size_t room = 0;
    std::optional<geometry::Point> place;
  };
  PosterSource source;
  std::vector<Wanted> wanted;
  poster::Wish wish;
};

// Saves posters as files and prints them, with the questions that this asks. Made and written on a thread of
// its own; each file is there whole, or what was there before stays.
class PosterFiles : public QObject {
  Q_OBJECT

 public:
  enum class As { Pdf, Png, Svg };
  enum class Rooms { This, All };
  // Made anew when it is asked for: saving the layout changes what stands on its posters.
  using MakeOrder = std::function<PosterOrder(Rooms)>;

  PosterFiles(Document& document, FileFlow& files, Asker& asker, MakeOrder order, QObject* parent = nullptr);

  void save(As as, Rooms rooms);
  void print();

 signals:
  void said(const QString& sentence);
  void lookWanted();  // at the records that posters are made by

 private:
  struct Made {
    PosterSource source;
    std::vector<std::string> rooms;  // ids, of each document
    std::vector<poster::Document> documents;
    QStringList left_out;    // nothing to show there, a line each
    QStringList barred;      // that should have a poster and have none
    QStringList shortfalls;  // of those that are made
  };
  struct File {
    QString path;
    QByteArray bytes;
  };

  void saveNow(As as, Rooms rooms);
  void printNow();
  bool mayBeMade();
  bool mayCarryHash();
  std::optional<Made> made(Rooms rooms);  // nothing: there is none, which was told
  // As everything is now: a stop may have failed while a name or a printer was chosen.
  std::optional<Made> madeStill(Made made, Rooms rooms);
  bool maySave(const Made& made);
  QString pathFor(const Made& made, As as, Rooms rooms);
  bool mayReplace(const std::vector<File>& files, const QString& asked);
  void write(const std::vector<File>& files, const Made& made);
  void refuse(const QString& path, const QString& why);
  void tell(const QString& title, const QString& text, const QString& details = {});

  static Made make(const PosterOrder& order);
  static std::vector<File> filesOf(const Made& made, As as, const QString& path, QString& why);

  Document& document_;
  FileFlow& files_;
  Asker& asker_;
  MakeOrder order_;
  Aside aside_;
};

// "The table does not fit ...": a clause of the poster's maker as a sentence.
QString asSentence(const QString& clause);

}  // namespace stopwalk::window
