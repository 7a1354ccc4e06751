#pragma once

#include <QDialog>
#include <QFormLayout>
#include <QLabel>

#include "app/panels/details/desk.h"
#include "app/panels/fields/field.h"

namespace stopwalk::panels {

// A few fields with a button that does what the title says, and one that does not.
class FormDialog : public QDialog {
  Q_OBJECT

 public:
  FormDialog(const Desk& desk, const QString& title, const QString& verb, QWidget* parent);

  void accept() override;
  QString refusal() const { return refused_->text(); }  // why it is not done; empty: nothing was refused

 protected:
  // A sentence above the fields.
  QLabel* say(const QString& text);
  void addField(Field* field);
  // With all fields entered and without trouble. Whether it is done, and the dialog can go; where the layout
  // refuses, it stays and says why.
  virtual bool carryOut() = 0;
  // Says below the fields why it is not done: false.
  bool refuse(const QString& why);
  const Desk& desk() const { return desk_; }

 private:
  Desk desk_;
  QFormLayout* form_;
  std::vector<Field*> fields_;
  QLabel* refused_;
};

}  // namespace stopwalk::panels
