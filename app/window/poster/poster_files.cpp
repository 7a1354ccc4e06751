#include "app/window/poster/poster_files.h"

#include <QDir>
#include <QFileInfo>
#include <QPrinter>
#include <algorithm>

#include "app/poster/texts.h"
#include "app/poster/write_pages.h"
#include "app/window/tell_written.h"
#include "core/layout/names.h"

namespace stopwalk::window {
namespace {

QString endingOf(PosterFiles::As as) {
  switch (as) {
    case PosterFiles::As::Pdf:
      return ".pdf";
    case PosterFiles::As::Png:
      return ".png";
    case PosterFiles::As::Svg:
      break;
  }
  return ".svg";
}

// "hall.png" as "hall-2.png".
QString withSuffix(const QString& path, const QString& suffix) {
  const QFileInfo info(path);
  const QString ending = info.suffix().isEmpty() ? QString() : "." + info.suffix();
  return QDir(info.path()).filePath(info.completeBaseName() + suffix + ending);
}

}  // namespace

QString asSentence(const QString& clause) {
  if (clause.isEmpty()) return clause;
  const QString sentence = clause.left(1).toUpper() + clause.mid(1);
  return sentence.endsWith('.') ? sentence : sentence + ".";
}

PosterFiles::PosterFiles(Document& document, FileFlow& files, Asker& asker, MakeOrder order, QObject* parent)
    : QObject(parent), document_(document), files_(files), asker_(asker), order_(std::move(order)) {}

void PosterFiles::tell(const QString& title, const QString& text, const QString& details) {
  asker_.ask({title, text, {tr("OK")}, details});
}

void PosterFiles::refuse(const QString& path, const QString& why) {
  tellWritten(asker_, path, {documents::Written::No, why}, {},
              [this](const QString& told) { emit said(told); });
}

// A poster that shows a stop as working though it failed misleads.
bool PosterFiles::mayBeMade() {
  files_.endTyping();
  emit lookWanted();
  const QString why = order_(Rooms::This).source.unreadable;
  if (why.isEmpty()) return true;
  tell(tr("No poster is made"), why);
  return false;
}

// A poster that cannot be held against a file misleads: whoever goes on without one does so knowingly.
bool PosterFiles::mayCarryHash() {
  if (!document_.fileHash().empty()) return true;
  const QString mark = order_(Rooms::This).wish.languages.front().say(poster::texts::kNotSaved);
  const int answer =
      asker_.ask({tr("Save the layout first?"),
                  tr("A poster carries the hash of the layout's file, by which anyone can tell later whether "
                     "it is still "
                     "true. This layout is not in its file as it is here: its posters would say %1 instead.")
                      .arg(mark),
                  {tr("Save the layout first"), tr("Go on, marked %1").arg(mark)}});
  if (answer == 0) return files_.save();
  return answer == 1;
}

PosterFiles::Made PosterFiles::make(const PosterOrder& order) {
  Made made;
  made.source = order.source;
  const PosterShop shop(order.source);
  for (const PosterOrder::Wanted& wanted : order.wanted) {
    const layout::Room& room = shop.layout().rooms[wanted.room];
    const QString name = QString::fromStdString(layout::nameOf(room));
    if (const QString why = shop.whyNot(wanted.room); !why.isEmpty()) {
      made.left_out << tr("%1: %2").arg(name, why);
      continue;
    }
    poster::Poster poster = shop.poster(wanted.room, wanted.place, order.wish);
    for (const poster::Shortfall& s : poster.shortfalls)
      (poster.document ? made.shortfalls : made.barred) << tr("%1: %2").arg(name, s.text);
    if (!poster.document) continue;
    made.rooms.push_back(room.id);
    made.documents.push_back(std::move(*poster.document));
  }
  return made;
}

std::optional<PosterFiles::Made> PosterFiles::made(Rooms rooms) {
  const PosterOrder order = order_(rooms);
  if (order.wanted.empty()) {
    tell(tr("There is no poster"), tr("The layout has no room indoors to make one of."));
    return std::nullopt;
  }
  emit said(tr("Posters are being made…"));
  Made made;
  aside_([&] { made = make(order); });
  emit said({});
  if (!made.documents.empty()) return made;
  tell(tr("There is no poster"), (made.barred + made.left_out).join('\n'));
  return std::nullopt;
}

std::optional<PosterFiles::Made> PosterFiles::madeStill(Made made, Rooms rooms) {
  if (!mayBeMade()) return std::nullopt;
  if (order_(rooms).source == made.source) return made;
  if (!mayCarryHash()) return std::nullopt;
  auto anew = this->made(rooms);
  return anew && maySave(*anew) ? std::move(anew) : std::nullopt;
}

bool PosterFiles::maySave(const Made& made) {
  if (made.barred.isEmpty()) return true;
  return asker_.ask({tr("Not every room has a poster on this paper"),
                     made.barred.join('\n'),
                     {tr("Save none"), tr("Save the others")}}) == 1;
}

QString PosterFiles::pathFor(const Made& made, As as, Rooms rooms) {
  const QString stem =
      document_.path().isEmpty() ? tr("poster") : QFileInfo(document_.path()).fileName().section('.', 0, 0);
  const QString what = rooms == Rooms::All ? tr("posters") : QString::fromStdString(made.rooms.front());
  const QString path =
      asker_.posterToSave(QDir(document_.folder()).filePath(stem + "-" + what + endingOf(as)));
  if (!path.isEmpty() && document_.isAt(path)) {
    tell(tr("That is the layout itself"), tr("Save the poster under another name."));
    return {};
  }
  return path;
}

// Nothing, with `why`: one of them could not be made.
std::vector<PosterFiles::File> PosterFiles::filesOf(const Made& made, As as, const QString& path,
                                                    QString& why) {
  std::vector<File> files;
  const auto add = [&](const QString& file, poster::Bytes bytes) {
    if (why.isEmpty()) why = bytes.why;
    files.push_back({file, std::move(bytes.bytes)});
  };
  if (as == As::Pdf) {
    add(path, poster::pdfOf(poster::joined(made.documents)));
    return files;
  }
  const poster::Document& document = made.documents.front();
  for (std::size_t page = 0; page < document.pages.size(); ++page) {
    const bool alone = document.pages.size() == 1;
    add(alone ? path : withSuffix(path, "-" + QString::number(page + 1)),
        as == As::Svg ? poster::svgOf(document, page) : poster::pngOf(document, page, poster::kDpi));
  }
  return files;
}

// The name that was asked for may be written over; those made from it were not asked for.
bool PosterFiles::mayReplace(const std::vector<File>& files, const QString& asked) {
  QStringList there;
  for (const File& file : files)
    if (file.path != asked && QFileInfo::exists(file.path)) there << QFileInfo(file.path).fileName();
  if (there.isEmpty()) return true;
  return asker_.ask({tr("Replace what is there?"),
                     tr("The poster has several pages, and each is a file. There already: %1.")
                         .arg(there.join(", ")),
                     {tr("Keep them"), tr("Replace them")}}) == 1;
}

void PosterFiles::write(const std::vector<File>& files, const Made& made) {
  for (const File& file : files)
    if (documents::isWriteProtected(file.path))
      return refuse(file.path, tr("It is write-protected, and is left as it is. Save under another name."));
  std::vector<documents::WriteResult> results;
  const QStringList read_from = document_.readFrom();
  aside_([&] {
    for (const File& file : files) {
      results.push_back(documents::writeExport(
          file.path, {file.bytes.constData(), static_cast<std::size_t>(file.bytes.size())}, read_from));
      if (results.back().written == documents::Written::No) break;
    }
  });
  QStringList paths;
  for (const File& file : files) paths << file.path;
  const auto worst = std::ranges::min_element(results, {}, &documents::WriteResult::written);
  const QString& path = files[static_cast<std::size_t>(worst - results.begin())].path;
  const bool is_good = tellWritten(asker_, path, *worst, tr("Written: %1").arg(paths.join(", ")),
                                   [this](const QString& told) { emit said(told); });
  if (is_good && made.documents.size() > 1 && !(made.left_out + made.shortfalls).isEmpty())
    tell(tr("The posters are written"),
         tr("What they do not do as they should, and rooms without one, are below."),
         (made.shortfalls + made.left_out).join('\n'));
}

void PosterFiles::save(As as, Rooms rooms) {
  if (!doOrTell(asker_, [&] { saveNow(as, rooms); })) emit said({});
}

void PosterFiles::print() {
  if (!doOrTell(asker_, [&] { printNow(); })) emit said({});
}

void PosterFiles::saveNow(As as, Rooms rooms) {
  if (!mayBeMade() || !mayCarryHash()) return;
  auto posters = made(rooms);
  if (!posters || !maySave(*posters)) return;
  const QString path = pathFor(*posters, as, rooms);
  if (path.isEmpty()) return;
  posters = madeStill(std::move(*posters), rooms);
  if (!posters) return;
  emit said(tr("The poster is being written…"));
  QString why;
  std::vector<File> files;
  aside_([&] { files = filesOf(*posters, as, path, why); });
  if (!why.isEmpty()) return refuse(path, asSentence(why));
  if (mayReplace(files, path))
    write(files, *posters);
  else
    emit said({});
}

void PosterFiles::printNow() {
  if (!mayBeMade() || !mayCarryHash()) return;
  auto posters = made(Rooms::This);
  if (!posters) return;
  QPrinter printer(QPrinter::HighResolution);
  const QSizeF sheet = posters->documents.front().pages.front().size;
  printer.setDocName(posters->documents.front().title());
  printer.setPageOrientation(sheet.width() > sheet.height() ? QPageLayout::Landscape : QPageLayout::Portrait);
  printer.setPageSize(QPageSize(sheet.width() > sheet.height() ? sheet.transposed() : sheet,
                                QPageSize::Millimeter, {}, QPageSize::FuzzyMatch));
  if (!asker_.choosePrinter(printer)) return;
  posters = madeStill(std::move(*posters), Rooms::This);
  if (!posters) return;
  emit said(tr("The poster is being printed…"));
  bool done = false;
  aside_([&] { done = poster::printOn(printer, posters->documents.front()); });
  if (done) return emit said(tr("Printed at 100 %. Measure the bar at the foot of the poster: 100 mm."));
  emit said({});
  tell(tr("The poster was not printed"), tr("The printer did not take it. Save it as PDF and print that at "
                                            "100 %, without fitting it to the page."));
}

}  // namespace stopwalk::window
