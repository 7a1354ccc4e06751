#pragma once

#include <string>

#include "app/panels/fields/value_field.h"

namespace stopwalk::panels {

// Words on one line.
class TextField : public ValueField<std::string> {
 public:
  // What is wrong with a text, as a sentence; empty if nothing.
  using Check = std::function<QString(const std::string&)>;

  explicit TextField(FieldText text, Check check = {}, QWidget* parent = nullptr)
      : ValueField(std::move(text), parent), check_(std::move(check)) {}

 protected:
  QString textOf(const std::string& text) const override { return QString::fromStdString(text); }
  Typed<std::string> read(const QString& typed) const override;

 private:
  Check check_;
};

// For texts that may not be empty.
TextField::Check notEmpty();
// What cannot be an id, whatever the others are.
QString idTrouble(const std::string& id);

// A day, `2026-03-02`, or nothing; steps by days from today on, large ones by months. `besides`: what else is
// asked of it.
class DateField : public TextField {
 public:
  explicit DateField(FieldText text, Check besides = {}, QWidget* parent = nullptr);

 protected:
  void step(int steps, bool large) override;
};

}  // namespace stopwalk::panels
