#include "app/documents/autosave.h"

#include "app/documents/recovery_store.h"

namespace stopwalk::documents {

Autosave::Autosave(RecoveryStore& store, QThreadPool& worker, const QString& id, std::function<Draft()> draft,
                   QObject* parent)
    : QObject(parent), store_(store), worker_(worker), id_(id), draft_(std::move(draft)) {
  worker_.setMaxThreadCount(1);
  quiet_.setSingleShot(true);
  latest_.setSingleShot(true);
  setPatience(250, 5000);
  connect(&quiet_, &QTimer::timeout, this, &Autosave::write);
  connect(&latest_, &QTimer::timeout, this, &Autosave::write);
}

Autosave::~Autosave() {
  worker_.waitForDone();
}

void Autosave::setPatience(int quiet_ms, int latest_ms) {
  quiet_.setInterval(quiet_ms);
  latest_.setInterval(latest_ms);
}

void Autosave::edited() {
  waiting_ = true;
  quiet_.start();
  if (!latest_.isActive()) latest_.start();
}

void Autosave::write() {
  if (!waiting_ || writing_) return;  // the end of the write that goes on begins the next
  quiet_.stop();
  latest_.stop();
  waiting_ = false;
  writing_ = true;
  worker_.start([this, round = round_, draft = draft_()] {
    const auto trouble = store_.store(id_, draft.layout_path, draft.base_sha256, draft.layout);
    QMetaObject::invokeMethod(
        this, [this, round, trouble] { finish(round, trouble); }, Qt::QueuedConnection);
  });
}

void Autosave::finish(int round, const std::optional<Trouble>& trouble) {
  if (round != round_) return;
  writing_ = false;
  const bool due = waiting_ && !(quiet_.isActive() && latest_.isActive());
  if (trouble) {
    waiting_ = true;
    if (!latest_.isActive()) latest_.start();
    emit failed(*trouble);
  } else {
    if (due) write();
    emit kept();
  }
}

std::optional<Trouble> Autosave::flush() {
  const bool wanted = waiting_ || writing_;
  quiet_.stop();
  latest_.stop();
  worker_.waitForDone();
  ++round_;
  waiting_ = writing_ = false;
  if (!wanted) return std::nullopt;
  // What was just written may have failed; the present state is written, whether or not.
  const Draft draft = draft_();
  auto trouble = store_.store(id_, draft.layout_path, draft.base_sha256, draft.layout);
  if (trouble) {
    waiting_ = true;
    latest_.start();
  }
  return trouble;
}

std::optional<Trouble> Autosave::discard() {
  quiet_.stop();
  latest_.stop();
  worker_.waitForDone();
  ++round_;
  waiting_ = writing_ = false;
  return store_.discard(id_);
}

}  // namespace stopwalk::documents
