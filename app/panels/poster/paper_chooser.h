#pragma once

#include <QWidget>
#include <string>

#include "app/panels/fields/choice_field.h"
#include "app/poster/poster.h"

namespace stopwalk::panels {

// How a person wants posters, as it is remembered: keys of the choices.
struct PaperChoice {
  std::string paper = "a3";
  std::string turn;  // `lying`, `upright`; empty: as fits best
  std::string language = "en";
  std::string also;    // a second language; empty: none
  std::string family;  // empty: the system's own
  bool operator==(const PaperChoice&) const = default;
};

// The wish of a poster maker; what is not known (any more) becomes what is usual.
poster::Wish wishOf(const PaperChoice& choice);

// Paper, its way up, languages and letters.
class PaperChooser : public QWidget {
  Q_OBJECT

 public:
  explicit PaperChooser(QWidget* parent = nullptr);

  const PaperChoice& choice() const { return choice_; }
  void show(const PaperChoice& choice);

  ChoiceField* paper() const { return paper_; }
  ChoiceField* turn() const { return turn_; }
  ChoiceField* language() const { return language_; }
  ChoiceField* also() const { return also_; }
  ChoiceField* letters() const { return letters_; }

 signals:
  void changed();

 private:
  ChoiceField* add(const FieldText& text, std::vector<Option> options, std::string PaperChoice::*value);

  PaperChoice choice_;
  ChoiceField *paper_, *turn_, *language_, *also_, *letters_;
};

}  // namespace stopwalk::panels
