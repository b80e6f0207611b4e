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

rem The JavaScript engine lies apart and is for the console alone; see the launcher for POSIX shells.
set "LIB=%HOME_DIR%\lib"
set "WANTED=java.se,jdk.jshell,jdk.unsupported,jdk.zipfs"
set "NATIVE=org.jline.nativ,org.xerial.sqlitejdbc"
if not "%~1"=="console" goto :found
if not exist "%HOME_DIR%\lib\js" goto :found
set "LIB=%HOME_DIR%\lib;%HOME_DIR%\lib\js"
set "WANTED=%WANTED%,org.graalvm.js"
set "NATIVE=org.graalvm.truffle,%NATIVE%"
:found
set "ALLOWED="
if %MAJOR% GEQ 24 set "ALLOWED=--enable-native-access=%NATIVE% --sun-misc-unsafe-memory-access=allow"
"%JAVA%" -XX:+UseSerialGC -Dfile.encoding=UTF-8 -Djdk.console=java.base %ALLOWED% "-Dreseat.home=%HOME_DIR%" %RESEAT_JAVA_OPTS% ^
    --module-path "%LIB%" --add-modules ALL-MODULE-PATH,%WANTED% ^
    --module reseat.console/reseat.console.Main %*
exit /b %ERRORLEVEL%
