#include "solid/kernel_guard.hpp"

#include <mutex>
#include <new>

#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <Standard_Failure.hxx>
#include <Standard_OutOfMemory.hxx>

namespace sparewright::solid {

base::Failure kernel_failure(std::string_view subject) {
  base::Failure failure;
  failure.code = base::Code::kKernel;
  failure.subject = subject;
  try {
    throw;
  } catch (const Standard_OutOfMemory&) {
    throw std::bad_alloc();
  } catch (const Standard_Failure& thrown) {
    failure.found = thrown.DynamicType()->Name();
    const char* words = thrown.GetMessageString();
    if (words != nullptr && *words != '\0') failure.found += std::string(": ") + words;
  }
  return failure;
}

void silence_kernel() {
  static std::once_flag once;
  std::call_once(once, [] { Message::DefaultMessenger()->RemovePrinters(STANDARD_TYPE(Message_Printer)); });
}

}  // namespace sparewright::solid
