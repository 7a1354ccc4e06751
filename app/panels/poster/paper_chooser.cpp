#include "app/panels/poster/paper_chooser.h"

#include <QFontDatabase>
#include <QFormLayout>
#include <algorithm>
#include <cmath>

#include "app/poster/lettering.h"

namespace stopwalk::panels {
namespace {

std::vector<Option> papers() {
  std::vector<Option> options;
  for (const poster::Paper& paper : poster::papers())
    options.push_back({paper.key, PaperChooser::tr("%1, %2 × %3 mm")
                                      .arg(paper.name)
                                      .arg(std::lround(paper.width_mm))
                                      .arg(std::lround(paper.height_mm))});
  return options;
}

std::vector<Option> languages(std::vector<Option> first) {
  for (const poster::LanguageName& language : poster::posterLanguages())
    first.push_back({language.key, QString::fromStdString(language.name)});
  return first;
}

std::vector<Option> families() {
  std::vector<Option> options{{"", PaperChooser::tr("The system's (%1)").arg(poster::usualFamily())}};
  for (const QString& family : QFontDatabase::families(QFontDatabase::Latin))
    if (QFontDatabase::isScalable(family)) options.push_back({family.toStdString(), family});
  return options;
}

bool isLanguage(const std::string& key) {
  return std::ranges::find(poster::posterLanguages(), key, &poster::LanguageName::key) !=
         poster::posterLanguages().end();
}

}  // namespace

poster::Wish wishOf(const PaperChoice& choice) {
  poster::Wish wish;
  if (const poster::Paper* paper = poster::paperOf(choice.paper)) wish.paper = *paper;
  if (!choice.turn.empty()) wish.landscape = choice.turn == "lying";
  wish.languages = {poster::Language(isLanguage(choice.language) ? choice.language : "en")};
  if (isLanguage(choice.also) && choice.also != choice.language) wish.languages.emplace_back(choice.also);
  const QString family = QString::fromStdString(choice.family);
  wish.family = !family.isEmpty() && poster::hasFamily(family) ? family : poster::usualFamily();
  return wish;
}

PaperChooser::PaperChooser(QWidget* parent) : QWidget(parent) {
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->setRowWrapPolicy(QFormLayout::DontWrapRows);
  paper_ = add({tr("Paper"), tr("The sheet that the poster is printed on.")}, papers(), &PaperChoice::paper);
  turn_ =
      add({tr("Lying or upright"), tr("Which way up the sheet hangs.")},
          {{"", tr("As fits best")}, {"lying", tr("Lying")}, {"upright", tr("Upright")}}, &PaperChoice::turn);
  language_ = add({tr("Language"), tr("Of the poster. What the shop wrote itself is not translated.")},
                  languages({}), &PaperChoice::language);
  also_ = add({tr("Also in"), tr("A second language on the same poster.")}, languages({{"", tr("No other")}}),
              &PaperChoice::also);
  letters_ = add({tr("Letters"), tr("The font of the poster.")}, families(), &PaperChoice::family);
  show(choice_);
}

ChoiceField* PaperChooser::add(const FieldText& text, std::vector<Option> options,
                               std::string PaperChoice::*value) {
  auto* field = new ChoiceField(text, std::move(options), this);
  field->entered = [this, value](const std::string& key) {
    choice_.*value = key;
    emit changed();
  };
  static_cast<QFormLayout*>(layout())->addRow(field->label(), field);
  return field;
}

void PaperChooser::show(const PaperChoice& choice) {
  choice_ = choice;
  if (!poster::paperOf(choice_.paper)) choice_.paper = PaperChoice().paper;
  if (!isLanguage(choice_.language)) choice_.language = "en";
  if (!isLanguage(choice_.also)) choice_.also.clear();
  if (choice_.turn != "lying" && choice_.turn != "upright") choice_.turn.clear();
  if (!choice_.family.empty() && !poster::hasFamily(QString::fromStdString(choice_.family)))
    choice_.family.clear();
  paper_->show(choice_.paper);
  turn_->show(choice_.turn);
  language_->show(choice_.language);
  also_->show(choice_.also);
  letters_->show(choice_.family);
}

}  // namespace stopwalk::panels
