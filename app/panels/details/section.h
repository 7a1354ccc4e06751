#pragma once

#include <QFormLayout>
#include <functional>
#include <string>
#include <vector>

#include "app/edits/things.h"
#include "app/panels/details/desk.h"
#include "app/panels/fields/field.h"

namespace stopwalk::panels {

// The fields of the things that are selected, all of one kind.
class Section : public QWidget {
  Q_OBJECT

 public:
  Section(const Desk& desk, std::vector<std::string> ids, QWidget* parent = nullptr);

  const std::vector<std::string>& ids() const { return ids_; }
  // Shows what the layout holds now.
  void refresh();
  // What was typed and not yet entered is entered now.
  void applyPending();

 protected:
  const layout::Layout& layout() const { return desk_.edited.layout(); }
  const Desk& desk() const { return desk_; }
  // Of the things that are still there.
  std::vector<edits::Thing> things() const;

  enum class Width { BesideLabel, Whole };
  void addRow(Field* field, std::function<void()> show, std::function<bool()> applies = {},
              Width width = Width::BesideLabel);
  // A heading over the rows that follow.
  void addHeading(const QString& text);
  // One step of the history: `name` with `%1` for what is changed; `field` is what steps are merged by.
  void change(const QString& name, const QString& field, const std::function<void(layout::Layout&)>& how);
  // Carries out an edit; where it changes nothing, the fields show again what is.
  void apply(edits::Edit edit);
  // The same thing under another id.
  void rename(const std::string& new_id);

 private:
  struct Row {
    Field* field;
    std::function<void()> show;
    std::function<bool()> applies;
    bool whole;
  };
  void setShown(const Row& row, bool shown);

  Desk desk_;
  std::vector<std::string> ids_;
  QFormLayout* form_;
  std::vector<Row> rows_;
};

}  // namespace stopwalk::panels
