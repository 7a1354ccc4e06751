#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <functional>
#include <optional>
#include <string>

#include "app/documents/trouble.h"
#include "core/layout/layout.h"

namespace stopwalk::documents {

class RecoveryStore;

// What is to be kept of a document, as it is now.
struct Draft {
  QString layout_path;
  std::string base_sha256;
  layout::Layout layout;
};

// When the unsaved state of a document is kept: shortly after each finished edit; while edits follow each
// other closely, at the latest five seconds after the first that is not kept yet. The writing is done by a
// thread of its own; if it is busy, the newest state is written next and those between are not. What failed
// is tried again.
//
//   Autosave autosave(store, store.newId(), [this] { return draft(); });
//   autosave.edited();   // after each finished edit
//   autosave.discard();  // after a save, or when the document is let go
class Autosave : public QObject {
  Q_OBJECT

 public:
  // `draft` is called on the thread of this object. All autosaves of one store share `worker`, of one thread.
  Autosave(RecoveryStore& store, QThreadPool& worker, const QString& id, std::function<Draft()> draft,
           QObject* parent = nullptr);
  ~Autosave() override;  // waits for a write that has begun; calls off what has not

  void edited();
  // Keeps the present state, if it is not, and waits for it.
  std::optional<Trouble> flush();
  // Nothing is kept any more, until the next edit.
  std::optional<Trouble> discard();
  bool isKept() const { return !waiting_ && !writing_; }
  void setPatience(int quiet_ms, int latest_ms);

 signals:
  void kept();
  void failed(const stopwalk::documents::Trouble& trouble);

 private:
  void write();
  void finish(int round, const std::optional<Trouble>& trouble);

  RecoveryStore& store_;
  QThreadPool& worker_;
  QString id_;
  std::function<Draft()> draft_;
  QTimer quiet_;   // since the last edit
  QTimer latest_;  // since the first edit that is not kept
  bool waiting_ = false;
  bool writing_ = false;
  int round_ = 0;  // ends of writes that were waited for are not told again
};

}  // namespace stopwalk::documents
