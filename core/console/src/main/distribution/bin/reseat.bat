@echo off
rem Starts Reseat. Finds Java by JAVA_HOME, else in PATH; needs 17 or newer.
rem RESEAT_JAVA_OPTS holds further options for Java, parted by blanks.
setlocal
set "HOME_DIR=%~dp0.."

if defined JAVA_HOME (
    set "JAVA=%JAVA_HOME%\bin\java.exe"
) else (
    set "JAVA=java.exe"
)
"%JAVA%" --version >nul 2>nul
if errorlevel 1 (
    echo reseat: no Java found; put a Java of 17 or newer into PATH or name its folder in JAVA_HOME 1>&2
    exit /b 3
)
for /f "tokens=2 delims=. " %%v in ('""%JAVA%" --version"') do (
    set "MAJOR=%%v"
    goto :checked
)
:checked
if %MAJOR% LSS 17 (
    echo reseat: needs Java 17 or newer, but %JAVA% is %MAJOR% 1>&2
    exit /b 3
)

set "ENGINE="
if %MAJOR% GEQ 24 set "ENGINE=--enable-native-access=org.graalvm.truffle,org.jline.nativ --sun-misc-unsafe-memory-access=allow"
"%JAVA%" -XX:+UseSerialGC -Dfile.encoding=UTF-8 -Djdk.console=java.base %ENGINE% "-Dreseat.home=%HOME_DIR%" %RESEAT_JAVA_OPTS% ^
    --module-path "%HOME_DIR%\lib" --add-modules ALL-MODULE-PATH,java.se,jdk.jshell,jdk.unsupported,jdk.zipfs ^
    --module reseat.console/reseat.console.Main %*
exit /b %ERRORLEVEL%
