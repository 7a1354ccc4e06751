#include "app/panels/sentence_label.h"

#include <QHBoxLayout>
#include <QStyle>

namespace stopwalk::panels {

QIcon severityIcon(audit::Severity severity, const QWidget& on) {
  switch (severity) {
    case audit::Severity::Fail:
      return on.style()->standardIcon(QStyle::SP_MessageBoxCritical);
    case audit::Severity::Warn:
      return on.style()->standardIcon(QStyle::SP_MessageBoxWarning);
    case audit::Severity::Note:
      return on.style()->standardIcon(QStyle::SP_MessageBoxInformation);
  }
  return {};
}

SentenceLabel::SentenceLabel(const Problem& problem, QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  auto* sign = new QLabel(this);
  const int side = fontMetrics().height();
  sign->setPixmap(severityIcon(problem.severity, *this).pixmap(side, side));
  auto* sentence = new QLabel(sentenceOf(problem), this);
  sentence->setWordWrap(true);
  sentence->setTextFormat(Qt::PlainText);
  sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
  row->addWidget(sign, 0, Qt::AlignTop);
  row->addWidget(sentence, 1);
}

}  // namespace stopwalk::panels
