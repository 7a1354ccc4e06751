#include "app/poster/pdf_language.h"

#define POINTERHOLDER_TRANSITION 4  // its pointers are std::shared_ptr
#include <exception>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

namespace stopwalk::poster {
namespace {

QByteArray changed(const QByteArray& pdf, const QString& language, const QString& subject) {
  QPDF file;
  file.setSuppressWarnings(true);
  file.processMemoryFile("poster", pdf.constData(), static_cast<std::size_t>(pdf.size()));

  QPDFObjectHandle root = file.getRoot();
  root.replaceKey("/Lang", QPDFObjectHandle::newString(language.toStdString()));
  root.replaceKey("/ViewerPreferences",
                  QPDFObjectHandle::parse("<< /DisplayDocTitle true /PrintScaling /None >>"));
  QPDFObjectHandle info = file.getTrailer().getKey("/Info");
  if (info.isDictionary() && !subject.isEmpty())
    info.replaceKey("/Subject", QPDFObjectHandle::newUnicodeString(subject.toStdString()));

  QPDFWriter writer(file);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace

QByteArray withLanguage(const QByteArray& pdf, const QString& language, const QString& subject,
                        QString& why) {
  try {
    return changed(pdf, language, subject);
  } catch (const std::exception& e) {
    why = QString::fromUtf8(e.what());
    return {};
  }
}

}  // namespace stopwalk::poster
