#include "app/poster/paged_text.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextBlock>
#include <QTextBoundaryFinder>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextOption>
#include <QTextTable>
#include <QUrl>

#include "app/poster/colours.h"
#include "app/poster/lettering.h"
#include "app/poster/pdf_language.h"

namespace stopwalk::poster {
namespace {

constexpr int kDpi = 600;
constexpr double kEdge_mm = 16;
constexpr double kFoot_mm = 8;
// Breaking a word into lines takes the square of its block's length.
constexpr int kMostInBlock = 1000;

// The heads are marked as such by hand: not every version takes <thead> for one.
void repeatHeads(QTextFrame* frame) {
  for (QTextFrame* child : frame->childFrames()) {
    if (auto* table = qobject_cast<QTextTable*>(child)) {
      QTextTableFormat format = table->format();
      format.setHeaderRowCount(1);
      format.setBorderCollapse(true);
      table->setFormat(format);
    }
    repeatHeads(child);
  }
}

// Where a longer text is broken best: at a line's end, else behind a word, else between two letters.
qsizetype breakIn(const QString& text) {
  const QString head = text.left(kMostInBlock);
  if (const qsizetype line = head.lastIndexOf(QChar::LineSeparator); line > 0) return line;
  if (const qsizetype blank = head.lastIndexOf(' '); blank > 0) return blank + 1;
  QTextBoundaryFinder letters(QTextBoundaryFinder::Grapheme, text);
  letters.setPosition(kMostInBlock);
  if (!letters.isAtBoundary()) letters.toPreviousBoundary();
  return letters.position() > 0 ? letters.position() : kMostInBlock;
}

void breakLongBlocks(QTextDocument& document) {
  QTextCursor cursor(&document);
  cursor.beginEditBlock();
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    if (block.length() <= kMostInBlock) continue;
    cursor.setPosition(block.position() + static_cast<int>(breakIn(block.text())));
    if (document.characterAt(cursor.position()) == QChar::LineSeparator) cursor.deleteChar();
    QTextBlockFormat above = block.blockFormat(), below = above;
    above.setBottomMargin(0);
    below.setTopMargin(0);
    cursor.setBlockFormat(above);
    cursor.insertBlock(below);
  }
  cursor.endEditBlock();
}

QTextOption wrapping() {
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  return option;
}

// The pages of the document, each with its foot.
void paintPages(QPainter& painter, QPdfWriter& writer, const QTextDocument& document, const PagedText& text,
                const QSizeF& body, const QRectF& foot, const QString& family) {
  const double edge = foot.left();
  const int pages = document.pageCount();
  for (int page = 0; page < pages; ++page) {
    if (page > 0) writer.newPage();
    painter.save();
    painter.translate(edge, edge - page * body.height());
    const QRectF shown(0, page * body.height(), body.width(), body.height());
    painter.setClipRect(shown);
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = shown;
    context.palette.setColor(QPalette::Text, inks().ink);
    document.documentLayout()->draw(&painter, context);
    painter.restore();
    painter.setFont(withLettersApart(QFont(family, 8)));
    painter.setPen(inks().quiet_ink);
    const QString number = QStringLiteral("page %1 of %2").arg(page + 1).arg(pages);
    const double left = foot.width() - 1.2 * painter.fontMetrics().horizontalAdvance(number);
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignTop,
                     painter.fontMetrics().elidedText(text.foot, Qt::ElideMiddle, static_cast<int>(left)));
    painter.drawText(foot, Qt::AlignRight | Qt::AlignTop, number);
  }
}

}  // namespace

QByteArray pagedPdf(const PagedText& text, const Paper& paper, const QString& family, QString& why) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setTitle(text.title);
  writer.setCreator("Stopwalk");
  writer.setResolution(kDpi);
  writer.setPageLayout(
      QPageLayout(QPageSize(paper.size(false), QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
                  QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
  const double per_mm = kDpi / 25.4;
  const QSizeF body((paper.width_mm - 2 * kEdge_mm) * per_mm,
                    (paper.height_mm - 2 * kEdge_mm - kFoot_mm) * per_mm);
  const QRectF foot(kEdge_mm * per_mm, (paper.height_mm - kEdge_mm - kFoot_mm / 2) * per_mm, body.width(),
                    kFoot_mm * per_mm);

  QTextDocument document;
  document.setUndoRedoEnabled(false);
  document.documentLayout()->setPaintDevice(&writer);
  document.setDefaultFont(withLettersApart(QFont(family, 9)));
  document.setDefaultTextOption(wrapping());
  for (const auto& [name, picture] : text.pictures)
    document.addResource(QTextDocument::ImageResource, QUrl(name), picture);
  document.setHtml(text.html);
  breakLongBlocks(document);
  document.setDocumentMargin(0);
  repeatHeads(document.rootFrame());
  document.setPageSize(body);

  QPainter painter;
  if (!painter.begin(&writer)) {
    why = "the PDF cannot be begun";
    return {};
  }
  paintPages(painter, writer, document, text, body, foot, family);
  if (!painter.end()) {
    why = "the PDF cannot be finished";
    return {};
  }
  return withLanguage(buffer.data(), "en", text.subject, why);
}

}  // namespace stopwalk::poster
