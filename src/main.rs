//! The program: everything is in the library.

fn main() -> std::process::ExitCode {
    std::process::ExitCode::from(rimebook::command::run(std::env::args_os()))
}
