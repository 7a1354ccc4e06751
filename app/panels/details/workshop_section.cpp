#include <QCompleter>

#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"
#include "core/audit/profile.h"
#include "core/files/profile_reader.h"

namespace stopwalk::panels {

namespace {

using layout::Layout;

// What belongs to no thing: the workshop as a whole, and its file.
class WorkshopSection : public ThingSection<Layout> {
  Q_DECLARE_TR_FUNCTIONS(WorkshopSection)

 public:
  WorkshopSection(const Desk& desk, QWidget* parent) : ThingSection(desk, {}, parent) {
    addSite();
    addHeading(tr("Revision"));
    addRevision();
    addHeading(tr("File"));
    addFile();
  }

 private:
  void addSite() {
    bind(
        new TextField({tr("Workshop"), tr("Its name, as it stands on reports and posters.")}, notEmpty()),
        [](auto& l) -> auto& { return l.site.name; });
    bind(
        new TextField({tr("Address"), tr("What to read to the one who answers an emergency call.")}),
        [](auto& l) -> auto& { return l.site.address; });
    bind(
        new TextField({tr("Emergency call"), tr("What to dial, and from which phone.")}),
        [](auto& l) -> auto& { return l.site.emergency_call; });
    bind(
        new TextField({tr("Meet responders at"), tr("The door or gate where somebody waits for them.")}),
        [](auto& l) -> auto& { return l.site.meet_responders_at; });
  }

  void addRevision() {
    NumberKind number;
    number.least = 0;
    number.whole = true;
    auto* field = new NumberField({tr("Number"), tr("Counts the plans that were put up on the wall.")},
                                  number, Known::Optional);
    field->setEmptyText(tr("no revision"));
    add(
        field,
        [](const Layout& l) { return l.revision ? std::optional<double>(l.revision->number) : std::nullopt; },
        [](Layout& l, const std::optional<double>& n) {
          if (!n) return l.revision.reset();
          if (!l.revision) l.revision.emplace();
          l.revision->number = static_cast<int>(*n);
        });
    addOfRevision(new DateField({tr("Day"), tr("Of this revision: year, month, day.")}),
                  &layout::Revision::date);
    addOfRevision(new TextField({tr("By"), tr("Who drew it.")}), &layout::Revision::by);
    addOfRevision(new TextField({tr("Reason"), tr("What changed, and why.")}), &layout::Revision::reason);
  }

  void addOfRevision(TextField* field, std::string layout::Revision::*member) {
    add(
        field, [member](const Layout& l) { return l.revision ? (*l.revision).*member : std::string(); },
        [member](Layout& l, const std::string& text) {
          if (!l.revision) l.revision.emplace().number = 1;
          (*l.revision).*member = text;
        });
  }

  void addFile() {
    bindChoice(
        new ChoiceField({tr("Unit"), tr("In which lengths are shown, typed without a unit, and written.")},
                        {{"mm", tr("millimetres")},
                         {"m", tr("metres")},
                         {"in", tr("inches")},
                         {"ft", tr("feet and inches")}}),
        [](auto& l) -> auto& { return l.unit; }, files::kUnits);
    QStringList bundled;
    for (const std::string& name : files::bundledProfiles()) bundled << QString::fromStdString(name);
    auto* profile = new TextField(
        {tr("Profile"), tr("The rules and limits to audit by: %1, or the name of a file beside the layout.")
                            .arg(bundled.join(", "))});
    profile->setEmptyText(audit::kDefaultProfile);
    profile->line()->setCompleter(new QCompleter(bundled, profile->line()));
    bind(
        profile, [](auto& l) -> auto& { return l.profile; });
  }
};

}  // namespace

Section* makeWorkshopSection(const Desk& desk, QWidget* parent) {
  return new WorkshopSection(desk, parent);
}

}  // namespace stopwalk::panels
