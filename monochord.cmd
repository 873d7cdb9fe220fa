@echo off
rem Starts Monochord on Windows. On first use, and when the sources are newer than the jar, it builds with Maven.
rem
rem   JAVA_HOME             the JDK to use (17 or newer); without it, the java on the PATH
rem   MONOCHORD_JAVA_OPTS   more options for the JVM
rem
rem The class-data archive is the JVM's own affair here: from Java 19 on it makes and renews it by itself, and
rem Java 17 passes over the option.
setlocal
set "ROOT=%~dp0"
set "JAR=%ROOT%target\monochord.jar"
set "NEEDS=Monochord needs a JDK 17 or newer: install one, or set JAVA_HOME to it."

if defined JAVA_HOME (
    set "HOME_OF_JAVA=%JAVA_HOME%"
) else (
    set "HOME_OF_JAVA="
    for /f "tokens=1* delims==" %%a in ('java -XshowSettings:properties -version 2^>^&1 ^| findstr /c:"java.home ="') do (
        for /f "tokens=*" %%h in ("%%b") do set "HOME_OF_JAVA=%%h"
    )
)
if not defined HOME_OF_JAVA (
    echo monochord: no Java was found. %NEEDS% 1>&2
    exit /b 3
)
if not exist "%HOME_OF_JAVA%\bin\java.exe" (
    echo monochord: there is no bin\java.exe in "%HOME_OF_JAVA%". %NEEDS% 1>&2
    exit /b 3
)
if not exist "%HOME_OF_JAVA%\bin\javac.exe" (
    echo monochord: the Java in "%HOME_OF_JAVA%" is a runtime without a compiler, a JRE. %NEEDS% 1>&2
    exit /b 3
)
set "VERSION="
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%HOME_OF_JAVA%\release"') do set "VERSION=%%~v"
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
    echo monochord: the Java in "%HOME_OF_JAVA%" is version %VERSION%. %NEEDS% 1>&2
    exit /b 3
)

rem target\seen holds the sources as they were built. xcopy names, and counts in its last line, those that are newer.
if not exist "%JAR%" (
    echo monochord: building, which happens once and may take a minute. 1>&2
    goto build
)
set "CHANGED=1"
for /f "tokens=1" %%n in ('xcopy "%ROOT%src\main" "%ROOT%target\seen\main\" /L /D /S /Y') do set "CHANGED=%%n"
if not "%CHANGED%"=="0" goto again
set "CHANGED=1"
for /f "tokens=1" %%n in ('xcopy "%ROOT%pom.xml" "%ROOT%target\seen\" /L /D /Y') do set "CHANGED=%%n"
if "%CHANGED%"=="0" goto start
:again
echo monochord: the sources have changed, building again. 1>&2

:build
where mvn >nul 2>nul
if errorlevel 1 (
    echo monochord: building needs Maven, and there is no mvn on the PATH. 1>&2
    exit /b 3
)
if not exist "%ROOT%target" mkdir "%ROOT%target"
set "JAVA_HOME=%HOME_OF_JAVA%"
call mvn -q -B -ntp -f "%ROOT%pom.xml" -Dmaven.test.skip=true -Dspotless.skip=true package >"%ROOT%target\build.log" 2>&1 <nul
if errorlevel 1 (
    echo monochord: the build failed; what Maven said is in "%ROOT%target\build.log". 1>&2
    exit /b 3
)
xcopy "%ROOT%src\main" "%ROOT%target\seen\main\" /S /Y /I /Q >nul
xcopy "%ROOT%pom.xml" "%ROOT%target\seen\" /Y /I /Q >nul

:start
"%HOME_OF_JAVA%\bin\java.exe" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn8m -XX:-UsePerfData -Xshare:auto -Xlog:disable -XX:+IgnoreUnrecognizedVMOptions -XX:+AutoCreateSharedArchive "-XX:SharedArchiveFile=%ROOT%target\monochord.jsa" %MONOCHORD_JAVA_OPTS% -jar "%JAR%" %*
exit /b %errorlevel%
