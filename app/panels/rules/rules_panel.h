#pragma once

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <map>

#include "app/panels/actions/verb.h"
#include "app/panels/details/desk.h"
#include "app/panels/fields/choice_field.h"
#include "app/panels/fields/text_field.h"
#include "app/panels/search_line.h"
#include "core/audit/profile.h"

namespace stopwalk::panels {

// The rules that the layout is audited by: each can be put off, made more or less severe, and given other
// limits. What is changed is kept with the layout, can be undone, and goes by the house's name.
class RulesPanel : public QWidget {
  Q_OBJECT

 public:
  explicit RulesPanel(const Desk& desk, QWidget* parent = nullptr);

  // As the layout's profile has them, before the house's own.
  // `trouble`: why it is not the one that the layout names; else empty.
  void setProfile(const audit::Profile& profile, const QString& trouble = {});
  // Another layout: the reasons that were typed for the old one go.
  void forget();
  QString head() const { return of_->text(); }
  void choose(const std::string& rule);
  void applyPending();

  QTreeWidget* tree() const { return tree_; }
  SearchLine* search() const { return search_; }
  ChoiceField* severity() const { return severity_; }
  const std::vector<LineField*>& limits() const { return limits_; }
  TextField* reason() const { return reason_; }
  QPushButton* asProfile() const { return as_profile_; }
  QString basis() const { return basis_->text(); }
  QComboBox* profileBox() const { return profile_box_; }
  Verb& fileVerb() const { return *from_file_; }
  Verb& saveVerb() const { return *save_; }
  // All that can be done here, in the order of a menu.
  QList<Verb*> verbs() const { return {is_on_, as_it_was_, choose_, from_file_, save_}; }

 signals:
  // One of the person's own is to be chosen for the layout.
  void profileFileWanted();
  // What the layout is audited by is to go into a profile file.
  void saveWanted();

 private:
  void makeVerbs();
  QWidget* profileLine();
  QWidget* editor();
  void showProfile();
  void showAll();
  void showRule();
  void showBasis(const audit::Rule& rule);
  void makeLimits(const audit::Rule& rule);
  void filter();
  void keep(const audit::Setting& wanted);
  const audit::Rule* current() const;

  Desk desk_;
  audit::Profile profile_ = audit::defaultProfile();  // as the layout names it
  audit::Profile kept_ = profile_;                    // with the house's own
  QLabel* of_;
  SearchLine* search_;
  QTreeWidget* tree_;
  QWidget* editor_;
  QFormLayout* form_;
  ChoiceField* severity_;
  std::vector<LineField*> limits_;
  QString trouble_;
  const audit::Rule* limits_of_ = nullptr;
  std::map<std::string, std::string> typed_first_;  // reasons for rules that are not changed yet, by rule
  TextField* reason_;
  QLabel* basis_;
  QPushButton* as_profile_;
  Verb *is_on_, *as_it_was_, *choose_, *from_file_, *save_;
  QComboBox* profile_box_;
  bool showing_ = false;
};

}  // namespace stopwalk::panels
