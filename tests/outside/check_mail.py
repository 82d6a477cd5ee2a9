"""Reads the draft that `rimebook mail` writes with the standard library and looks at its parts.

    python tests/outside/check_mail.py target/release/rimebook jobs-example/brackwater/flake-ice-1
"""

import email
import email.policy
import pathlib
import subprocess
import sys
import tempfile


def draft(program: str, system: str) -> bytes:
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([program, "mail", system, "--into", folder], check=True, capture_output=True)
        (path,) = pathlib.Path(folder).iterdir()
        return path.read_bytes()


def main(program: str, system: str) -> None:
    raw = draft(program, system)
    assert raw == draft(program, system), "the same notes give the same bytes"
    assert b"\n" not in raw.replace(b"\r\n", b""), "lines end in CRLF"
    message = email.message_from_bytes(raw, policy=email.policy.default)
    assert not message.defects, message.defects
    assert message["To"] and message["From"] and message["Subject"] and message["Date"]
    assert message["Message-ID"].endswith("@rimebook.invalid>"), message["Message-ID"]
    text, pdf = list(message.iter_parts())
    assert text.get_content_type() == "text/plain" and "The report is attached." in text.get_content()
    assert pdf.get_content_type() == "application/pdf" and pdf.get_filename().endswith(".pdf")
    assert pdf.get_content().startswith(b"%PDF-1.7")
    print(f"mail: {len(raw)} bytes, subject {message['Subject']!r}")


if __name__ == "__main__":
    main(*sys.argv[1:])
