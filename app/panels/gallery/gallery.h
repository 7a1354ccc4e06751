#pragma once

#include <QLabel>
#include <QTreeWidget>

#include "app/panels/gallery/offers.h"
#include "app/panels/search_line.h"
#include "app/plan/catalogue.h"
#include "app/plan/choice.h"

namespace stopwalk::panels {

// All that can be drawn, in groups, to be chosen for the pointer.
class Gallery : public QWidget {
  Q_OBJECT

 public:
  explicit Gallery(const plan::Catalogue& catalogue, QWidget* parent = nullptr);

  // The shop's own kinds and machines came or went.
  void setCatalogue(const plan::Catalogue& catalogue);
  // Marks what the pointer draws now; nothing for Select.
  void showChoice(const plan::Choice& choice);

  QTreeWidget* list() const { return list_; }
  SearchLine* search() const { return search_; }

 signals:
  void chosen(const stopwalk::plan::Choice& choice);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void drawSymbols();
  void filter();
  void choose(QTreeWidgetItem* item);
  QTreeWidgetItem* firstShown() const;

  QTreeWidget* list_;
  SearchLine* search_;
  QLabel* none_;
  std::vector<Offer> offers_;  // by the number that an item carries
};

}  // namespace stopwalk::panels
