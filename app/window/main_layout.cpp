// What stands where in the window.
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QTabWidget>
#include <QToolBar>
#include <QVBoxLayout>

#include "app/panels/details/details.h"
#include "app/panels/gallery/gallery.h"
#include "app/panels/poster/paper_chooser.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/things/thing_list.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/files_beside.h"
#include "app/window/first_minutes.h"
#include "app/window/inspect_place.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/poster_place.h"
#include "app/window/records_beside.h"
#include "app/window/round_papers.h"

namespace stopwalk::window {
namespace {

constexpr int kLeft_px = 240;
constexpr int kRight_px = 340;
constexpr int kUnder_px = 240;
constexpr int kPosterUnder_px = 170;

}  // namespace

void MainWindow::layOut() {
  plan_ = new plan::PlanView(document_->edited(), selection_, document_->catalogue());
  notices_ = new NoticeBar;
  audit_place_ = new AuditPlace({document_->edited(), selection_, document_->catalogue()}, this);
  inspect_place_ = new InspectPlace(selection_, settings_, this);
  poster_place_ = new PosterPlace(*document_, *files_, asker_, settings_, this);
  records_ = new RecordsBeside(this);
  files_beside_ = new FilesBeside(this);
  round_papers_ = new RoundPapers(
      *document_, *files_, asker_,
      [this] {
        records_->lookNow();
        return RoundPaperSource{posterSource(), *records_->read(), inspect_place_->round().round(),
                                records_->trouble(), panels::wishOf(poster_place_->paper().choice())};
      },
      this);
  connect(round_papers_, &RoundPapers::choiceWanted, this, [this] {
    goToPlace(WorkPlace::Inspect);
    inspect_place_->showStart();
  });
  connect(inspect_place_, &InspectPlace::sheetWanted, this,
          [this](const planning::RoundScope& scope, const inspection::RoundWalk& walk) {
            doOrTell(asker_, [&] { round_papers_->saveSheetOf(scope, walk); });
          });
  connect(round_papers_, &RoundPapers::said, this, [this](const QString& said) { sentence_->setText(said); });
  left_ = new QStackedWidget;
  left_->addWidget(leftSide());
  left_->addWidget(audit_place_->side());
  left_->addWidget(inspect_place_->side());
  left_->addWidget(poster_place_->side());

  plan_and_details_ = new QSplitter(Qt::Horizontal);
  plan_and_details_->addWidget(middle());
  plan_and_details_->addWidget(rightSide());
  plan_and_details_->setStretchFactor(0, 1);
  plan_and_details_->setSizes({1280 - kLeft_px - kRight_px, kRight_px});
  auto* over = new QSplitter(Qt::Vertical);
  over->addWidget(plan_and_details_);
  over->addWidget(audit_place_->under());
  over->addWidget(poster_place_->under());
  over->setStretchFactor(0, 1);
  over->setSizes({500, kUnder_px, kPosterUnder_px});
  split_ = new QSplitter(Qt::Horizontal);
  split_->addWidget(left_);
  split_->addWidget(over);
  split_->setStretchFactor(1, 1);
  split_->setSizes({kLeft_px, 1280 - kLeft_px});
  for (QSplitter* splitter : {plan_and_details_, over, split_}) splitter->setChildrenCollapsible(false);
  setCentralWidget(split_);
  makePlaces();

  first_minutes_ = new FirstMinutes(FileFlow::samples(), plan_);
  sentence_ = new QLabel;
  sentence_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  statusBar()->addWidget(sentence_, 1);
  statusBar()->setSizeGripEnabled(false);
}

QWidget* MainWindow::middle() {
  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(notices_);
  page_or_plan_ = new QStackedWidget;
  page_or_plan_->addWidget(plan_);
  page_or_plan_->addWidget(poster_place_->middle());
  column->addWidget(page_or_plan_, 1);
  column->addWidget(inspect_place_->under());
  return middle;
}

// Along the top, in the order of the work.
void MainWindow::makePlaces() {
  places_ = new QTabBar;
  places_->setAccessibleName(tr("Places of work"));
  places_->setDrawBase(false);
  places_->setExpanding(false);
  QFont bold = places_->font();
  bold.setBold(true);
  places_->setFont(bold);
  places_->addTab(tr("Draw"));
  places_->addTab(tr("Audit"));
  places_->addTab(tr("Inspect"));
  places_->addTab(tr("Poster"));
  places_->setTabToolTip(0, tr("Draw and change the plan (Alt+1)"));
  places_->setTabToolTip(1, tr("Findings, all stations, and what if (Alt+2)"));
  places_->setTabToolTip(2, tr("What is due, and rounds from device to device (Alt+3)"));
  places_->setTabToolTip(3, tr("The stop-location poster of each room (Alt+4)"));
  auto* bar = addToolBar(tr("Places of work"));
  bar->setObjectName("places");
  bar->setMovable(false);
  bar->toggleViewAction()->setVisible(false);
  bar->addWidget(places_);
  connect(places_, &QTabBar::currentChanged, this,
          [this](int place) { goToPlace(static_cast<WorkPlace>(place)); });
  goToPlace(WorkPlace::Draw);
}

QWidget* MainWindow::leftSide() {
  auto* tabs = new QTabWidget;
  tabs->setObjectName("drawing");
  tabs->setDocumentMode(true);
  tabs->setAccessibleName(tr("What there is to draw, and what is drawn"));
  gallery_ = new panels::Gallery(document_->catalogue());
  things_ = new panels::ThingList({document_->edited(), selection_, document_->catalogue()});
  tabs->addTab(gallery_, tr("Gallery"));
  tabs->addTab(things_, tr("Things"));
  return tabs;
}

QWidget* MainWindow::rightSide() {
  auto* side = new QSplitter(Qt::Vertical);
  details_ = new panels::Details({document_->edited(), selection_, document_->catalogue()});
  problems_ = new panels::ProblemList;
  side->addWidget(details_);
  side->addWidget(problems_);
  side->setStretchFactor(0, 1);
  side->setSizes({500, 240});
  side->setChildrenCollapsible(false);
  return side;
}

}  // namespace stopwalk::window
