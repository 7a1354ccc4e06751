// The menu of the place where the layout is audited.
#include <QTabWidget>
#include <QTableView>

#include "app/panels/actions/plain_text.h"
#include "app/panels/findings/accepting.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/stations/station_table.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/window/audit_place.h"
#include "app/window/commands.h"

namespace stopwalk::window {

void AuditPlace::fillMenu(MenuMaker& menu, const std::function<void()>& come_here,
                          const OnceAudited& once_audited) {
  menu.menu()->setToolTipsVisible(true);  // that say why something cannot be done
  const auto add = [&](panels::Verb& verb, QWidget* page = nullptr) {
    verb.setLead([this, come_here, page](const auto& run) {
      come_here();
      if (page) tabs_->setCurrentWidget(page);
      run();
    });
    menu.add(&verb);
  };
  // What is shown at once to whoever just came is of the place that was left.
  const auto addCopy = [&](panels::Verb& verb) {
    verb.setLead([this, come_here, once_audited, &verb](const auto& run) {
      const bool was_here = side_->isVisible();
      come_here();
      was_here ? run() : once_audited(panels::nameOf(verb), run);
    });
    menu.add(&verb);
  };
  const auto go = [&](const QString& text, const QString& key, std::function<void()> there) {
    menu.add(text, QKeySequence(key), [come_here, there] {
      come_here();
      there();
    });
  };
  go(tr("Look at the &findings"), tr("Ctrl+Shift+F"),
     [this] { turnTo(*tabs_->widget(0), *findings_->tree()); });
  findings_->fillMenu(*menu.addMenu(tr("How findings are &listed")), come_here);
  addCopy(findings_->copyVerb());
  add(findings_->exportVerb());
  // Of the finding as it is once what was typed is entered: what stands there may be of a moment ago.
  for (panels::Verb* verb : {&accepting_->acceptVerb(), &accepting_->takeBackVerb()}) {
    verb->setLead([this, come_here, once_audited, verb](const auto& run) {
      come_here();
      tabs_->setCurrentIndex(0);
      once_audited(panels::nameOf(*verb), run);
    });
    menu.add(verb);
  }
  menu.addSeparator();
  go(tr("Look at the table of &stations"), tr("Ctrl+Shift+T"), [this] { stations_->view()->setFocus(); });
  addCopy(stations_->copyVerb());
  add(stations_->exportVerb());
  menu.addSeparator();
  go(tr("Look at &what if"), tr("Ctrl+Shift+Y"), [this] { turnTo(*suppose_, *suppose_->tree()); });
  for (panels::Verb* verb : suppose_->verbs()) add(*verb, suppose_);
  menu.addSeparator();
  fillReachMenu(*menu.addMenu(tr("Colour the floor b&y")), come_here);
  menu.addSeparator();
  go(tr("Look at the &rules"), tr("Ctrl+Shift+P"), [this] { turnTo(*rules_, *rules_->tree()); });
  for (panels::Verb* verb : rules_->verbs()) add(*verb, rules_);
}

void AuditPlace::turnTo(QWidget& page, QWidget& list) {
  tabs_->setCurrentWidget(&page);
  list.setFocus();
}

// The stop of a machine is that of the one picked on the plan, where one is.
void AuditPlace::fillReachMenu(QMenu& menu, const std::function<void()>& come_here) {
  panels::addChoices(menu, *reach_->whatBox(), [this, come_here] {
    come_here();
    for (const std::string& id : desk_.selection.ids()) reach_->setMachine(id);
  });
}

}  // namespace stopwalk::window
