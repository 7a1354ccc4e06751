#pragma once

#include <QCoreApplication>
#include <functional>
#include <utility>

#include "app/panels/fields/line_field.h"

namespace stopwalk::panels {

inline QString differText() {
  return QCoreApplication::translate("Field", "differ");
}

// What was typed, understood, or why not.
template <class V>
struct Typed {
  V value = {};
  QString trouble = {};
};

// A line that holds a value of type V. A value that nobody typed is never read back from its text.
template <class V>
class ValueField : public LineField {
 public:
  using Value = V;
  using LineField::LineField;

  // Called with each value that a person enters.
  std::function<void(const V&)> entered;
  // Why a value that could be read is not taken all the same; empty: it is. None: each is.
  std::function<QString(const V&)> refuses;

  const V& value() const { return value_; }

  // Stands in the line while it is empty: what that means.
  void setEmptyText(const QString& text) {
    empty_text_ = text;
    if (shows_ != Shows::Several) line()->setPlaceholderText(text);
  }

  void show(const V& value) {
    const bool same = shows_ == Shows::One && value_ == value;
    value_ = value;
    shows_ = Shows::One;
    line()->setPlaceholderText(empty_text_);
    if (!same || !isBeingTyped()) setShown(textOf(value));
  }

  // Several things, whose values are not the same.
  void showDiffering() {
    if (shows_ == Shows::Several && isBeingTyped()) return;
    shows_ = Shows::Several;
    value_ = {};
    line()->setPlaceholderText(differText());
    setShown({});
  }

 protected:
  virtual QString textOf(const V& value) const = 0;
  virtual Typed<V> read(const QString& typed) const = 0;

  void enter(const QString& typed) override {
    const Typed<V> t = read(typed);
    setTrouble(t.trouble);
    if (t.trouble.isEmpty()) take(t.value);
  }

  // As if it had been typed.
  void take(const V& value) {
    if (const QString why = refuses ? refuses(value) : QString(); !why.isEmpty()) return setTrouble(why);
    const bool changes = shows_ != Shows::One || !(value_ == value);
    show(value);
    setShown(textOf(value));
    if (changes && entered) entered(value);
  }

  bool showsSeveral() const { return shows_ == Shows::Several; }
  // Shows the same value anew: its unit has changed.
  void showAgain() {
    if (shows_ == Shows::One && !isBeingTyped()) setShown(textOf(value_));
  }

 private:
  enum class Shows { Nothing, One, Several };
  Shows shows_ = Shows::Nothing;
  V value_ = {};
  QString empty_text_;
};

}  // namespace stopwalk::panels
